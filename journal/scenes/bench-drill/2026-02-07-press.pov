// webp 1200x1600 blur 58-120 turn 6 taken "2026:02:07 20:02:17"
#include "shop.inc"
Cam(<-16, 20, -46>, <0, 15, 0>, 31)
LampLight()
Bench(-30) Wall(44, 1, 54)
object { RB(<-80, 33, -5>, <80, 36, 5>, .3) texture { T_Dull } } object { RB(<-80, 36, -.8>, <80, 44, .8>, .2) texture { T_Dull } } object { RB(<-80, 43, -5>, <80, 46, 5>, .3) texture { T_Dull } }
// bottle jack
object { RB(<-5, 0, -4>, <5, 1.4, 4>, .3) texture { T_Red } } object { RC(y*1.2, y*9.6, 3.2, .5) texture { T_Red } } cylinder { y*9.6, y*12, 1.5 texture { T_Polish } } cylinder { y*12, y*12.7, 2.1 texture { T_Steel } } cylinder { <4.4, 1, -1>, <4.4, 4.6, -1>, .8 texture { T_Steel } } cylinder { <4.4, 4.6, -1>, <16, 8, -12>, .5 texture { T_Steel } } 
object { RB(<-7, 12.7, -4>, <7, 14, 4>, .15) texture { T_Steel } }
object { RB(<-5.6, 14, -2.6>, <-1.4, 17.6, 2.6>, .12) texture { T_Ground } } object { RB(<1.4, 14, -2.6>, <5.6, 17.6, 2.6>, .12) texture { T_Ground } }
object { Pulley(3.2, 1.8) texture { T_AluTurn } rotate z*90 rotate x*180 translate y*23 }
cylinder { y*15, y*33, .78 texture { T_Steel } }
#for (I, 0, 15) object { RB(<-.25, 24 + I*.55, -1.3 + I*.012>, <.25, 24.3 + I*.55, 0>, .04) texture { T_HSS } } #end
object { RB(<-2.5, 32.2, -2.5>, <2.5, 33, 2.5>, .1) texture { T_Brass } }
object { Chips(90, 5, 3, .2, 1, T_ChipAlu, .8) translate <0, 0, -6> }
union { cylinder { 0, y*4, 2.2 texture { Painted(<.08,.2,.12>) } } cone { y*4, 2.2, y*5.6, .6 texture { Painted(<.08,.2,.12>) } } cone { y*5.6, .4, <2.8, 10, 0>, .12 texture { T_Brass } } translate <-13, 0, 5> }
