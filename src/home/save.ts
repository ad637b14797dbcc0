import { download } from "../hosts/download";
import { csvOf } from "../share/csv";
import "./home.css";

const [CSV, PNG] = [".csv", ".png"];
/** A plain file name; the address may hold anything. */
const asked = (new URLSearchParams(location.search).get("name") ?? "").replace(/[^\p{L}\p{N} ._-]/gu, "");
const name = asked.endsWith(PNG) || asked.endsWith(CSV) ? asked : `canfall${CSV}`;
const result = document.getElementById("result")!;
document.getElementById("name")!.textContent = name;

async function pasted(data: DataTransfer): Promise<Uint8Array | null> {
  if (name.endsWith(PNG)) {
    const picture = [...data.files].find(({ type }) => type === "image/png");
    return picture ? new Uint8Array(await picture.arrayBuffer()) : null;
  }
  const text = data.getData("text/plain");
  return text.includes("\t") ? csvOf(text.split("\r\n").map((line) => line.split("\t"))) : null;
}

addEventListener("paste", async ({ clipboardData }) => {
  const file = clipboardData && (await pasted(clipboardData));
  if (file) download(file, name);
  const kind = name.endsWith(PNG) ? "picture" : "table";
  result.textContent = file
    ? `${name} is in your downloads. This page can be closed.`
    : `The clipboard holds no ${kind}: press the button in Canfall's pane again, then paste here.`;
});
