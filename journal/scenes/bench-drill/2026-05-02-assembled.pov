// jpg 1200x1600 blur 82-170 taken "2026:05:02 20:06:42"
#include "shop.inc"
Cam(<-33, 34, -66>, <-1, 27, 1>, 41)
LampLight()
BenchRoom(57)
object { BenchDrill(T_Sea, 13, 1) rotate y*-6 }
union { RC(0, y*6, 3.2, .3) cone { y*6, 3.2, y*9, .8 } torus { 2.2, .3 rotate x*90 scale <.8, 1, 1> translate <-3.6, 4, 0> } cone { y*9, .5, <5.4, 16, 0>, .16 texture { T_Brass } } Painted(<.05,.13,.3>) rotate y*20 translate <-15, 0, -6> }
object { Cloth(14, 12, <.36,.09,.07>, 5) scale <1, 1.5, 1> rotate y*-20 translate <15, .1, -9> }
