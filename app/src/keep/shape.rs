//! The shape of the database, step by step. A step never touches what an earlier one made.

use js_sys::Array;
use wasm_bindgen::prelude::*;
use web_sys::{
    IdbDatabase, IdbIndexParameters, IdbObjectStore, IdbObjectStoreParameters, IdbOpenDbRequest,
    IdbVersionChangeEvent,
};

/// The version of the database's shape. A record's own version is apart from it.
pub(super) const SHAPE: u32 = 2;
pub(super) const RECORDS: &str = "records";
pub(super) const PAST: &str = "past";
pub(super) const DRAFTS: &str = "drafts";
pub(super) const META: &str = "meta";
/// Since shape 2.
pub(super) const PICTURES: &str = "pictures";
pub(super) const BY_KIND: &str = "by_kind";
pub(super) const BY_SUBJECT: &str = "by_subject";

/// Takes the steps that the database has not taken yet.
pub(super) fn step_up(request: &IdbOpenDbRequest, event: &IdbVersionChangeEvent) {
    let Ok(database) = request.result().and_then(JsCast::dyn_into::<IdbDatabase>) else {
        return;
    };
    let from = event.old_version();
    let stepped = (|| -> Result<(), JsValue> {
        if from < 1.0 {
            records_and_drafts(&database)?;
        }
        if from < 2.0 {
            pictures(&database)?;
        }
        Ok(())
    })();
    if stepped.is_err() {
        // Aborting undoes a half-built shape; the open request then fails and says so.
        let _ = request.transaction().map(|transaction| transaction.abort());
    }
}

fn make(database: &IdbDatabase, name: &str, key: &JsValue) -> Result<IdbObjectStore, JsValue> {
    let parameters = IdbObjectStoreParameters::new();
    parameters.set_key_path(key);
    database.create_object_store_with_optional_parameters(name, &parameters)
}

fn paths(names: &[&str]) -> Array {
    names.iter().map(|name| JsValue::from_str(name)).collect()
}

/// Shape 1.
fn records_and_drafts(database: &IdbDatabase) -> Result<(), JsValue> {
    let records = make(database, RECORDS, &"id".into())?;
    let plain = IdbIndexParameters::new();
    for (index, names) in [
        (BY_KIND, ["kind", "at", "id"]),
        (BY_SUBJECT, ["subject", "at", "id"]),
    ] {
        records.create_index_with_str_sequence_and_optional_parameters(
            index,
            &paths(&names),
            &plain,
        )?;
    }
    make(database, PAST, &paths(&["id", "stamp"]))?;
    make(database, DRAFTS, &"key".into())?;
    make(database, META, &"key".into())?;
    Ok(())
}

/// Shape 2: pictures by their sum, beside the records.
fn pictures(database: &IdbDatabase) -> Result<(), JsValue> {
    make(database, PICTURES, &"sha256".into()).map(|_| ())
}
