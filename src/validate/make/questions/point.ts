/** A question that asks for a place on a figure. */
import type { Question } from "../../../engine/quiz/kinds.ts";
import type { Shape } from "../../../engine/quiz/shape.ts";
import { resolvePath } from "../../../model/path.ts";
import { asked, type DataOf, type Making } from "./making.ts";

/** A path that leads out of the content folder stays as written; the rule for figures reports it. */
export function makePoint(data: DataOf<"point">, { source }: Making): Question {
  const { file, alt } = data.figure;
  return {
    ...asked(data),
    kind: "point",
    figure: { file: resolvePath(source.path, file) ?? file, alt },
    places: data.places.map((place) => ({
      text: place.where,
      right: place.right,
      why: place.why,
      shape: shapeOf(place),
    })),
  };
}

function shapeOf({ circle, rectangle }: DataOf<"point">["places"][number]): Shape {
  if (circle !== undefined) {
    const [x, y, r] = circle;
    return { kind: "circle", x, y, r };
  }
  const [x, y, width, height] = rectangle!;
  return { kind: "rectangle", x, y, width, height };
}
