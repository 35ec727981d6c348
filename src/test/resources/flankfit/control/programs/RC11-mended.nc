; sheet: D1 = { geometry = 0.0 }, D4 = { geometry = 0.0 }; tool 4: end mill, diameter 10
; absent RC11
G21 G90 G17 G54
T4 M6
S1000 M3 F200.
G41 D4 G1 X5.
Y9.
G40 X0
M30
