import type { Edition } from "../edition";
import { australian } from "./australia";
import { britishColumbian } from "./canada-british-columbia";
import { nationalBuilding } from "./canada-nbc";
import { ontarian } from "./canada-ontario";
import { denmark } from "./denmark";
import { finland } from "./finland";
import { france } from "./france";
import { german } from "./germany";
import { ireland } from "./ireland";
import { netherlands } from "./netherlands";
import { newZealand } from "./new-zealand";
import { norway } from "./norway";
import { passiveHouse } from "./passive-house";
import { sweden } from "./sweden";
import { approvedDocumentF } from "./uk-adf";
import { northernIreland } from "./uk-northern-ireland";
import { scotland } from "./uk-scotland";
import { ashrae } from "./us-62-2";
import { alaska } from "./us-alaska";
import { californian } from "./us-california";
import { florida } from "./us-florida";
import { manufacturedHomes } from "./us-hud-3280";
import { energyConservation } from "./us-iecc";
import { internationalMechanical } from "./us-imc";
import { internationalResidential } from "./us-irc";
import { newYork } from "./us-new-york";
import { northCarolina } from "./us-north-carolina";
import { oregon } from "./us-oregon";
import { programmes } from "./us-programmes";
import { southCarolina } from "./us-south-carolina";
import { washington } from "./us-washington";

/** Every edition, code and programme, in the order in which lists show them. */
export const allEditions: readonly Edition[] = [
  ...ashrae,
  ...internationalResidential,
  ...internationalMechanical,
  manufacturedHomes,
  ...californian,
  washington,
  oregon,
  alaska,
  northCarolina,
  florida,
  newYork,
  southCarolina,
  ...programmes,
  ...energyConservation,
  ...approvedDocumentF,
  scotland,
  northernIreland,
  ireland,
  ...nationalBuilding,
  ...ontarian,
  ...britishColumbian,
  ...newZealand,
  ...australian,
  passiveHouse,
  france,
  ...german,
  netherlands,
  norway,
  sweden,
  finland,
  denmark,
];
