; expect error WD10 3
G21 G90 G54
T1.5 M6
M30
