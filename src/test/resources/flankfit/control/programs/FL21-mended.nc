; absent FL21
O1
M30
O2
M99
