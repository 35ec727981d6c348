; sheet: D1 = { geometry = 0.0 }
; absent RC01
G21 G90 G17 G54 G40 G49 S1000 M3 F200.
G0 X0 Y0 Z5.
G41 D1 G1 X5.
G40 X0
M30
