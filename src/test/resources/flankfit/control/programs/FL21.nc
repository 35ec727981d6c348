; expect error FL21 4
O1
M30
O1
M99
