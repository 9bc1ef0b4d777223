/** The little of Eleventy's main export that is used here; the package ships no types for it. */
declare module "@11ty/eleventy" {
  export interface UserConfig {
    addTemplate(path: string, content: (data: TemplateData) => string, data: Record<string, unknown>): void;
    setTemplateFormats(formats: readonly string[]): void;
  }

  export interface TemplateData {
    /** The item of the pagination, under its alias. */
    readonly file: string;
  }

  export interface Options {
    /** An empty path means: read no configuration file. */
    readonly configPath: string;
    readonly quietMode: boolean;
    readonly config: (config: UserConfig) => void;
  }

  export default class Eleventy {
    constructor(input: string, output: string, options: Options);
    /** Nothing is printed, not even the count of files. */
    disableLogger(): void;
    write(): Promise<unknown>;
  }
}
