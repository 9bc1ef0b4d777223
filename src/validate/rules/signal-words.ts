/** Signal words mean what the standards say, and a message says what to do (ANSI Z535.6, ISO 3864-2). English only. */
import type { Hazard } from "../../model/sheet.ts";
import { inFile, type Rule } from "./rule.ts";

/** What happens to people; NOTICE is for damage. */
const harmToPeople =
  /\b(injur|burn|cut|wound|poison|blind|skin|eyes?\b|breath|lung|finger|hand\b|hands\b|scald|dizz|kill|death|hurt)/i;

/** "Be careful." tells nobody what to do. */
const saysNothing =
  /^(?:please )?(?:be|stay|remain|take|use|act|work|proceed|handle)?(?: (?:it|them|this))?(?: (?:with|very|extra|great|due|all|more|particularly))*\s*(?:care(?:ful(?:ly)?)?|caution|cautious(?:ly)?|attention|attentive|alert|aware|safe(?:ly)?|watchful)(?: (?:at all times|here|when working|of (?:it|this|the danger|the hazard)))?[.!]?$/i;

export const signalWords: Rule = {
  name: "signal words",
  check(content, reporter) {
    for (const hazard of content.hazards.values()) {
      const harm = hazard.signal === "notice" ? harmIn(hazard) : undefined;
      if (harm !== undefined)
        reporter.report(
          "notice-injury",
          inFile(content, hazard, ["signal"]),
          `the signal word is notice, and the text speaks of harm to people ("${harm}")`,
        );
      if (isGrave(hazard) && hazard.avoid.every((way) => saysNothing.test(way)))
        reporter.report(
          "vague-avoidance",
          inFile(content, hazard, ["avoid", 0]),
          `the signal word is ${hazard.signal}, and "${hazard.avoid[0]}" is all that is said to avoid the hazard`,
        );
    }
  },
};

const harmIn = ({ hazard, consequence }: Hazard): string | undefined =>
  harmToPeople.exec(`${hazard} ${consequence}`)?.[0];

const isGrave = ({ signal }: Hazard): boolean => signal === "danger" || signal === "warning";
