; expect warning WD12 3
G21 G90 G54
X5.
M30
