; sheet: arc-turns = "P"
; absent AR08
G21 G90 G17 G54 G40 G49 S1000 M3 F200.
G0 X0 Y0 Z5.
G2 X10. I5. P2
M30
