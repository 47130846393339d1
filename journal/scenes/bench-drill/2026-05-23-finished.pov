// jpg 1200x1600 blur 72-150 turn 6 taken "2026:05:23 19:40:55"
#include "shop.inc"
Cam(<-25, 41, -58>, <.3, 32, -2>, 38)
WindowLight()
BenchRoom(3)
BenchDrill(T_Sea, 16, 1)
difference { RB(<-5.2, 16.02, -5.6>, <5.2, 16.7, 1.6>, .06) #for (I, 0, 5) #for (K, 0, 3) cylinder { <-4.1 + I*1.64, 15, -4.7 + K*1.8>, <-4.1 + I*1.64, 18, -4.7 + K*1.8>, .36 } #end #end texture { T_Ground } }
object { Chips(70, 1.6, 1.2, .8, 2, T_ChipSteel, .6) translate <3.9, 16.1, -6.2> } object { Chips(150, 8, 5, .4, 2, T_ChipSteel, .8) translate <-3, 3, -7> }
Mark(<0, 49, -2>, "52 20 pulley") Mark(<-1, 16.5, -5>, "46 80 plate")
