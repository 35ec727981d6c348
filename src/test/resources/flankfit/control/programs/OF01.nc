; expect warning OF01 3
G21 G90
G0 X5.
M30
