; expect warning MD13 3
G21 G90 G54
M3
M30
