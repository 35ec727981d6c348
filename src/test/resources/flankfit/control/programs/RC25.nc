; sheet: D1 = { geometry = 0.0 }
; expect error RC25 7
G21 G90 G17 G54 G40 G49 G80 S1000 M3 F200.
G0 X0 Y0 Z5.
G41 D1 G1 X5.
Y9.
G81 Z-5. R2.
M30
