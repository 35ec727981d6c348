; sheet: number-reading = "least-increment"
; expect warning RD16 5
G21 G90 G17 G54 G40 G49 S1000 M3 F200.
G0 X0 Y0 Z5.
G0 X25
M30
