; sheet: D4 = { geometry = -2.0 }; tool 4: end mill, diameter 10
; expect warning RC15 7
G21 G90 G17 G54
T4 M6
S1000 M3 F200.
G0 X0 Y0 Z5.
G41 D4 G1 X50.
Y90.
G40 X0
M30
