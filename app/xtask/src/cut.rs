//! Cuts the built wasm in two: what the first screens need, and the rest, which is fetched behind them.
//!
//! The app marks where it may be cut (`app/src/places/later.rs`). The cut is made before wasm-bindgen, which sees only
//! the first part; the scripts that fetch and join the second are written with it.

use std::fmt::Write as _;
use std::path::Path;

use anyhow::{Context as _, Result, anyhow, bail};
use wasm_split_cli_support::{Options, transform};

/// The first part, for wasm-bindgen.
pub(crate) const FIRST: &str = "first.wasm";
/// The part that is fetched later.
pub(crate) const LATER: &str = "later.wasm";
/// The script between the two.
pub(crate) const JOIN: &str = "join.js";
/// What the tool calls the later part, after the word at the app's mark.
const MADE: &str = "split_later.wasm";

/// Cuts `wasm` and writes the two parts and the script between them into `out`, an empty folder.
///
/// # Errors
/// When the tool fails, or writes something else than these three.
pub(crate) fn cut(wasm: &[u8], out: &Path) -> Result<()> {
    let (first, link) = (out.join(FIRST), imported());
    let mut options = Options::new(wasm);
    options.output_dir = out;
    options.main_out_path = &first;
    options.link_name = &link;
    options.main_module = "./app.js";
    let made = transform(options).map_err(|error| anyhow!("the wasm cannot be cut: {error:#}"))?;
    if made.split_modules != [out.join(MADE)] {
        bail!("only {MADE} was expected, not {:?}", made.split_modules);
    }
    std::fs::rename(out.join(MADE), out.join(LATER))?;
    let script = std::fs::read_to_string(out.join(JOIN)).context("cannot read the join script")?;
    std::fs::write(out.join(JOIN), join(&script)?)?;
    Ok(())
}

/// The join script as the wasm imports it.
fn imported() -> String {
    format!("./{JOIN}")
}

/// The join script as it is served.
///
/// As it is written it imports the app's script, which imports it: two files cannot each carry the other's hash. So it
/// waits to be told ([`joined`]). And it leaves the compiling of a stream to hosts that name the type of a wasm; this
/// one reads the bytes, whatever they are called.
fn join(script: &str) -> Result<String> {
    let mut text = once(
        script,
        "import { initSync } from \"./app.js\";",
        "let initSync;\nexport const attach = (init) => { initSync = init; };",
    )?;
    text = once(
        &text,
        "WebAssembly.instantiateStreaming(src, imports)",
        "read(src, imports)",
    )?;
    text = once(
        &text,
        &format!("\"./{MADE}\""),
        &format!("\"./@@{LATER}@@\""),
    )?;
    text.push_str(
        "async function read(src, imports) {\n    \
             const answer = await src;\n    \
             if (!answer.ok) throw new Error(`${answer.status} for ${answer.url}`);\n    \
             return WebAssembly.instantiate(await answer.arrayBuffer(), imports);\n\
         }\n",
    );
    Ok(text)
}

/// The app's script as it is served: it names the join script by its served path, and tells it how to reach the first part.
///
/// # Errors
/// When wasm-bindgen wrote something else than is looked for.
pub(crate) fn joined(app: &str) -> Result<String> {
    let (import, served) = (imported(), format!("./@@{JOIN}@@"));
    let quoted = |quote: char| format!("from {quote}{import}{quote}");
    let named = [quoted('"'), quoted('\'')]
        .into_iter()
        .find(|import| app.contains(import.as_str()))
        .context("app.js does not import the join script")?;
    let mut text = once(app, &named, &format!("from '{served}'"))?;
    if !text.contains("function initSync(") {
        bail!("app.js has no initSync");
    }
    write!(
        text,
        "\nimport {{ attach }} from '{served}';\nattach(initSync);\n"
    )?;
    Ok(text)
}

fn once(text: &str, old: &str, new: &str) -> Result<String> {
    if text.matches(old).count() != 1 {
        bail!("`{old}` is not there exactly once");
    }
    Ok(text.replacen(old, new, 1))
}

#[cfg(test)]
mod tests {
    use super::*;

    const SCRIPT: &str = "import { initSync } from \"./app.js\";\n\
        const src = fetch(new URL(\"./split_later.wasm\", import.meta.url));\n\
        (WebAssembly.instantiateStreaming(src, imports));\n";

    #[test]
    fn the_join_script_names_no_file_that_names_it() {
        let text = join(SCRIPT).unwrap();
        assert!(!text.contains("app.js"), "{text}");
        assert!(text.contains("\"./@@later.wasm@@\""), "{text}");
        assert!(!text.contains("Streaming"), "{text}");
    }

    #[test]
    fn another_script_than_the_known_one_is_refused() {
        assert!(join(&SCRIPT.replace("initSync", "start")).is_err());
        assert!(join(&format!("{SCRIPT}{SCRIPT}")).is_err());
        assert!(joined("export { initSync };").is_err());
    }

    #[test]
    fn the_app_tells_the_join_script_where_it_is() {
        let app = "import * as first from \"./join.js\"\nimports[\"./join.js\"] = first;\nfunction initSync(module) {}\n";
        let text = joined(app).unwrap();
        assert!(
            text.contains("import * as first from './@@join.js@@'"),
            "{text}"
        );
        // The wasm asks for it under the name it was linked with.
        assert!(text.contains("imports[\"./join.js\"]"), "{text}");
        assert!(text.ends_with("attach(initSync);\n"), "{text}");
    }
}
