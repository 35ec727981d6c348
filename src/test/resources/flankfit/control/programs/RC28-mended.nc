; sheet: D4 = { geometry = 7.0 }; tool 4: thread mill, diameter 14; hole "port" M20x1.5-6H at (0, 0), diameter 18.5
; absent RC28
G21 G90 G17 G54
T4 M6
S1000 M3 F200.
G0 X0 Y0 Z5.
G1 Z2.
G41 D4 X10. Y0
G3 I-10. Z1.
G1 G40 X0 Y0
M30
