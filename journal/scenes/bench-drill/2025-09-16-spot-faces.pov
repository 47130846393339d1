// jpg 1600x1200 blur 66-140 turn 3 taken "2025:09:16 20:27:51"
#include "shop.inc"
Cam(<-25, 30, -31>, <0, 1.6, .6>, 35)
TubeLight()
MillRoom(0, 32)
union { difference { object { BaseCasting(T_Cast) } #for (I, -1, 1, 2) #for (K, -1, 1, 2) cylinder { <I*6.4, 2.86, K*10.2>, <I*6.4, 5, K*10.2>, 1.42 texture { TurnedIn(<.5,.5,.49>, x*90) translate <I*6.4, 0, K*10.2> } } cylinder { <I*6.4, -1, K*10.2>, <I*6.4, 5, K*10.2>, .5 texture { T_Mach } } #end #end }
  rotate y*-90 rotate y*8 }
object { Strap(3, 3) rotate y*200 translate <15.5, 0, 1> } 
object { Chips(260, 12, 4, .4, 0, T_ChipIron, .7) translate <-2, 0, -10> } object { Chips(60, 3, 2, .3, 1, T_ChipIron, .6) translate <-9, 2.9, -5> }
