//! The core in a page: the same answer to a case as `core/examples/plan.rs` gives.

use tussock_core::log::Case;
use wasm_bindgen::prelude::*;

/// The plan, group plan or refusal of every subject of a case, as the command prints it.
///
/// # Errors
/// The case cannot be read; the text says which record and field.
#[wasm_bindgen]
pub fn answer(case: &str) -> Result<String, String> {
    let case = Case::read(case).map_err(|error| format!("the case cannot be read: {error:?}"))?;
    serde_json::to_string_pretty(&case.account()).map_err(|error| error.to_string())
}
