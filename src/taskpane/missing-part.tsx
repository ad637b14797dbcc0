import { Button } from "@fluentui/react-components";
import { Component, type ReactNode } from "react";
import { isMissing } from "./parts/task/words";

const KEY = "canfall-loaded-again";

/** Whether the page was loaded again for this before; yes where that cannot be kept. */
function again(): boolean {
  try {
    const before = sessionStorage.getItem(KEY) !== null;
    sessionStorage.setItem(KEY, "yes");
    return before;
  } catch {
    return true;
  }
}

interface Props {
  children: ReactNode;
  /** Whether something was typed in the pane since it was loaded. */
  typed: () => boolean;
  reload: () => void;
}

/**
 * Around a step whose file may be gone, as after a new version was put up: the page is loaded again once by itself, where
 * nothing was typed in the pane; else the person decides.
 */
export class MissingPart extends Component<Props, { reason: unknown }> {
  override state = { reason: null as unknown };

  static getDerivedStateFromError(reason: unknown) {
    return { reason };
  }

  override componentDidCatch(reason: unknown): void {
    if (isMissing(reason) && !this.props.typed() && !again()) this.props.reload();
  }

  override render(): ReactNode {
    const { reason } = this.state;
    if (reason === null) return this.props.children;
    if (!isMissing(reason)) throw reason;
    return (
      <section>
        <p role="alert" className="problem">
          This step did not load: a newer Canfall is on its host, or there is no connection. The other steps go on. Load
          Canfall again? Text in fields of the pane that is not in the workbook yet is lost then.
        </p>
        <Button onClick={this.props.reload}>Load Canfall again</Button>
      </section>
    );
  }
}
