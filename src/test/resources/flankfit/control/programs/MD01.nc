; expect error MD01 3
G21 G90 G54
G1 X5.
M30
