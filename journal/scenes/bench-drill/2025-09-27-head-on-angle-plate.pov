// jpg 1600x1200 blur 62-140 taken "2025:09:27 21:40:22"
#include "shop.inc"
Cam(<-5, 19, -42>, <5.6, 7, 0>, 41)
LampLight()
MillRoom(0, 33)
#declare HY = 9.2;
object { AnglePlate(30, 15, 11) translate <4, 0, 3> }
union {
object { Head(T_Cast, 0, 0, 0) translate <5.4, HY, 0> }
object { RB(<5.5, HY - 3, -1.05>, <7.6, HY + 3.4, 0>, .15) texture { T_Ground } }
object { RB(<2.9, HY - 3.4, -1.12>, <5.6, HY + 3.4, 0>, .2) texture { T_Cast } }
object { Jack(HY - 5.7) translate <.9, 0, 0> } object { Jack(HY - 3.6) translate <5.6, 0, -.6> } object { Jack(HY - 4) translate <10.2, 0, 0> }
// straps from the angle plate over both bosses and the web
#macro Side(X, Y, L) union { RB(<-L, -.55, -1.05>, <L, .55, 0>, .1) cylinder { <0, 0, -2>, <0, 0, 6>, .36 } object { Hex(0, .9, .72) rotate -x*90 translate <0, 0, -1.05> } texture { T_Dull } translate <X, Y, -2.7> } #end
object { Side(-4.6, HY + 3.2, 5) } object { Side(-4.6, HY - 3.4, 5) } 
object { Strap(1.6, 4) rotate y*90 translate <-5.8, 0, 8> } object { Strap(5, 3.6) rotate y*180 translate <16.6, 0, 0> }
object { EndMill(.8, 10) translate <7.6, HY + .2, -2> } MillHead(<7.6, HY + 9, -2>)
  translate x*4.6 }
object { Chips(300, 9, 4, .5, 0, T_ChipIron, .7) translate <8, 0, -6> }
Mark(<.6, HY - 1.4, 3>, "42 55 angle plate") Mark(<10.2, 3.2, -1>, "60 70 second jack") Mark(<11.6, HY + 2, -1>, "71 30 datum side")
