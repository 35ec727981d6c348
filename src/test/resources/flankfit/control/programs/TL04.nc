; sheet: H2 = { geometry = 120.0 }
; expect error TL04 5
G21 G90 G54
T2 M6
G0 Z5.
M30
