/** What is used of a worker's surroundings (W3C, Service Workers); the types of pages and of workers can't stand in one program. */
import type { EditionGlobal } from "../../model/edition.ts";

export interface LastingEvent extends Event {
  /** The worker is not ended before that. */
  waitUntil(work: Promise<unknown>): void;
}

export interface AskedEvent extends LastingEvent {
  readonly request: Request;
  /** Of the page that asks; "" for a page that is only coming. */
  readonly clientId: string;
  respondWith(answer: Promise<Response>): void;
}

export interface ToldEvent extends LastingEvent {
  readonly data: unknown;
  readonly ports: readonly MessagePort[];
}

export interface OpenPage {
  readonly id: string;
  postMessage(message: unknown): void;
}

export interface WorkerScope extends EditionGlobal {
  readonly caches: CacheStorage;
  readonly registration: ServiceWorkerRegistration;
  readonly clients: {
    matchAll(options?: { readonly includeUncontrolled: boolean }): Promise<readonly OpenPage[]>;
    claim(): Promise<void>;
  };
  skipWaiting(): Promise<void>;
  addEventListener(kind: "install" | "activate", listen: (event: LastingEvent) => void): void;
  addEventListener(kind: "fetch", listen: (event: AskedEvent) => void): void;
  addEventListener(kind: "message", listen: (event: ToldEvent) => void): void;
}
