/** What a step brings to what it works on, by the substances that it takes. */
export interface Treatment {
  readonly cleans: boolean;
  readonly lubricates: boolean;
  /** Oil comes on it, whatever for. */
  readonly oily: boolean;
  /** Something that it takes can burn. */
  readonly flammable: boolean;
  /** What it works on is dry once it is done. */
  readonly dries: boolean;
  /** It is done with heat, flame or sparks. */
  readonly hotWork: boolean;
}

export type TreatmentOf<Step> = (step: Step) => Treatment;
