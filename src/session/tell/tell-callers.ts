/** Those who call the open kitchen: each says one line, which is acted on once. */
import type { Socket } from "node:net";
import type { Carried } from "../carried.ts";
import { COMMAND_MARK, handedWish, LONGEST_COMMAND } from "../day/handed-wish.ts";
import { GLASS_MARK } from "../glass/glass-protocol.ts";
import {
  answerText,
  ENVELOPE,
  LONGEST_WORDS,
  type Message,
  messageIn,
  oneLine,
  type TellAnswer,
} from "./tell-protocol.ts";

/** The kitchen's answer to words or a command passed to it. */
export type Answerer = (said: string | Carried) => TellAnswer | Promise<TellAnswer>;

/** Takes a connection over for good; `hello` is its first line, `rest` what came after it. */
export type OpenGlass = (socket: Socket, hello: string, rest: string) => void;

/** How long a caller has to send its words, and the kitchen to answer, ms. */
const LINE_DEADLINE_MS = 5000;
const ANSWER_DEADLINE_MS = 10_000;

/** How many messages' answers are remembered. */
const REMEMBERED = 1000;

export class Callers {
  private readonly answer: Answerer;
  private readonly openGlass: OpenGlass | undefined;
  private readonly answered = new Map<string, Promise<TellAnswer>>();

  constructor(answer: Answerer, openGlass?: OpenGlass) {
    this.answer = answer;
    this.openGlass = openGlass;
  }

  /** One caller: reads its line, hands it over once, answers and hangs up. */
  serve(socket: Socket): void {
    let heard = "";
    let over = false;
    const reply = (text: TellAnswer): void => {
      over = true;
      clearTimeout(deadline);
      if (!socket.destroyed) socket.end(answerText(text), () => socket.destroy());
    };
    const expire = (why: string) => () => reply(refused(why));
    let deadline = setTimeout(expire("no words came"), LINE_DEADLINE_MS);
    const take = (line: string): void => {
      over = true;
      clearTimeout(deadline);
      deadline = setTimeout(expire("the kitchen did not answer in time"), ANSWER_DEADLINE_MS);
      void this.once(line).then(reply);
    };
    const onData = (chunk: string) => {
      if (over) return;
      heard += chunk;
      const end = heard.indexOf("\n");
      if (end >= 0 && heard.startsWith(GLASS_MARK) && this.openGlass) {
        clearTimeout(deadline);
        socket.setTimeout(0);
        socket.off("data", onData).off("end", onEnd);
        this.openGlass(socket, heard.slice(0, end), heard.slice(end + 1));
      } else if (end >= 0) take(heard.slice(0, end));
      else if (heard.length > LONGEST_LINE) reply(refused(tooLong(LONGEST_WORDS)));
    };
    // Words without their line end may be cut short, and a piece can mean the opposite.
    const onEnd = () => {
      if (!over) reply(refused(heard === "" ? "no words came" : "the words were cut short"));
    };
    socket.setEncoding("utf8");
    // A caller that does not read its answer is not waited for.
    socket.setTimeout(LINE_DEADLINE_MS + ANSWER_DEADLINE_MS, () => socket.destroy());
    socket.on("error", () => socket.destroy());
    socket.on("close", () => clearTimeout(deadline));
    socket.on("data", onData).on("end", onEnd);
  }

  /** Acts on a message unless that was done already; the same answer then. */
  private once(line: string): Promise<TellAnswer> {
    const message = messageIn(line);
    if (!message) return Promise.resolve(refused("this kitchen takes no such message"));
    const { id, again } = message;
    if (id === "") return this.replyTo(message);
    const known = this.answered.get(id);
    if (known) return known;
    if (again) {
      const why = "the kitchen was opened anew meanwhile; look whether it has it before you say it";
      return Promise.resolve(refused(`${why} again`));
    }
    const answer = this.replyTo(message);
    this.answered.set(id, answer);
    const [oldest] = this.answered.keys();
    if (this.answered.size > REMEMBERED && oldest !== undefined) this.answered.delete(oldest);
    return answer;
  }

  private async replyTo({ said: line }: Message): Promise<TellAnswer> {
    const isCommand = line.startsWith(COMMAND_MARK);
    const longest = isCommand ? LONGEST_COMMAND : LONGEST_WORDS;
    if (line.length > longest) return refused(tooLong(longest));
    const said = isCommand ? handedWish(line) : oneLine(line);
    if (said === undefined) return refused("this kitchen takes no such command");
    if (said === "") return refused("no words came");
    try {
      return await this.answer(said);
    } catch (error) {
      return refused(`the kitchen could not answer: ${(error as Error).message}`);
    }
  }
}

/** No line of any kind is longer, what JSON makes of it included. */
const LONGEST_LINE = 2 * LONGEST_COMMAND + ENVELOPE;

function refused(why: string): TellAnswer {
  return { refused: true, lines: [why] };
}

function tooLong(longest: number): string {
  return `at most ${longest} characters at a time`;
}
