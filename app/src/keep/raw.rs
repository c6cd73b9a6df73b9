//! IndexedDB through web-sys, and nothing else: open with upgrade steps, write one batch, read a bounded range.
//!
//! All puts of a batch are issued without an await between them, and "saved" means the transaction's `complete`
//! event. What a person typed is written with strict durability, which web-sys does not bind: see [`Held`].

use super::KeepError;
use super::shape::{BY_KIND, BY_SUBJECT, DRAFTS, META, PAST, PICTURES, RECORDS, SHAPE, step_up};
use super::transaction::Held;
use super::wait::{answered, completed, failing, opened};
use js_sys::{Array, Object, Promise, Reflect, Uint8Array};
use tussock_flow::rows::{PictureRow, Range, Row, Writes};
use wasm_bindgen::prelude::*;
use wasm_bindgen_futures::JsFuture;
use web_sys::{
    IdbCursorDirection, IdbCursorWithValue, IdbDatabase, IdbKeyRange, IdbObjectStore,
    IdbVersionChangeEvent,
};

/// An open database.
#[derive(Clone)]
pub(super) struct Raw(IdbDatabase);

/// Opens a database by name, building or stepping up its shape.
///
/// `on_lost` is called when the connection goes away: another tab wants a newer shape, or the browser closed it.
pub(super) async fn open(
    name: &str,
    on_lost: impl Fn() + Clone + 'static,
) -> Result<Raw, KeepError> {
    let factory = web_sys::window()
        .and_then(|window| window.indexed_db().ok().flatten())
        .ok_or(KeepError::NoDisk)?;
    let request = factory.open_with_u32(name, SHAPE).map_err(KeepError::of)?;
    let upgrading = request.clone();
    let upgrade = Closure::once_into_js(move |event: IdbVersionChangeEvent| {
        step_up(&upgrading, &event);
    });
    request.set_onupgradeneeded(Some(upgrade.unchecked_ref()));
    let opened = opened(&request).await?;
    let database: IdbDatabase = opened.dyn_into().map_err(KeepError::of)?;
    let (closing, tell) = (database.clone(), on_lost.clone());
    // Another tab steps the shape up: let go at once, so that it is never blocked.
    let versionchange = Closure::<dyn Fn()>::new(move || {
        closing.close();
        tell();
    });
    database.set_onversionchange(Some(versionchange.into_js_value().unchecked_ref()));
    let close = Closure::<dyn Fn()>::new(on_lost);
    database.set_onclose(Some(close.into_js_value().unchecked_ref()));
    Ok(Raw(database))
}

impl Raw {
    /// Writes a batch with strict durability and comes back when the disk says `complete`.
    ///
    /// The version that a row replaces is read and moved to the past inside the same transaction.
    pub(super) async fn write(&self, writes: &Writes) -> Result<(), KeepError> {
        let mut stores = vec![RECORDS, PAST, DRAFTS, META];
        if !writes.pictures.is_empty() {
            stores.push(PICTURES);
        }
        let transaction = self.transaction(&stores, "readwrite", true)?;
        let done = completed(&transaction);
        let issued = (|| -> Result<(), JsValue> {
            let records = transaction.object_store(RECORDS)?;
            let past = transaction.object_store(PAST)?;
            for row in &writes.rows {
                put_row(&records, &past, row)?;
            }
            for picture in &writes.pictures {
                transaction
                    .object_store(PICTURES)?
                    .put(&object_of_picture(picture)?)?;
            }
            let drafts = transaction.object_store(DRAFTS)?;
            for key in &writes.clear_drafts {
                drafts.delete(&JsValue::from_str(key))?;
            }
            let meta = transaction.object_store(META)?;
            for (key, value) in &writes.meta {
                meta.put(&object(&[
                    ("key", key.as_str().into()),
                    ("value", value.as_str().into()),
                ])?)?;
            }
            Ok(())
        })();
        if let Err(error) = issued {
            let _ = transaction.abort();
            // The abort settles the promise; the first error is the one to tell.
            let _ = JsFuture::from(done).await;
            return Err(KeepError::of(error));
        }
        JsFuture::from(done)
            .await
            .map(|_| ())
            .map_err(KeepError::of)
    }

    /// Reads a bounded range, newest first.
    pub(super) async fn read(&self, range: &Range) -> Result<Vec<Row>, KeepError> {
        let transaction = self.transaction(&[RECORDS], "readonly", false)?;
        let records = transaction.object_store(RECORDS).map_err(KeepError::of)?;
        match range {
            Range::One(id) => {
                let request = records.get(&JsValue::from_str(id)).map_err(KeepError::of)?;
                let found = answered(&request).await?;
                Ok(row_of(&found).into_iter().collect())
            }
            Range::Kind { kind, from, limit } => {
                newest(&records, BY_KIND, kind, *from, *limit).await
            }
            Range::Subject {
                subject,
                from,
                limit,
            } => newest(&records, BY_SUBJECT, subject, *from, *limit).await,
        }
    }

    /// How many records there are of a kind.
    pub(super) async fn count(&self, kind: &str) -> Result<u32, KeepError> {
        let transaction = self.transaction(&[RECORDS], "readonly", false)?;
        let index = transaction
            .object_store(RECORDS)
            .and_then(|records| records.index(BY_KIND))
            .map_err(KeepError::of)?;
        let range = prefix(kind, i64::MIN).map_err(KeepError::of)?;
        let request = index.count_with_key(&range).map_err(KeepError::of)?;
        let found = answered(&request).await?;
        #[allow(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "a count of records"
        )]
        Ok(found.as_f64().unwrap_or_default() as u32)
    }

    /// Keeps a draft. Relaxed: it is written while typing, and the last keystrokes matter less than a smooth key.
    pub(super) async fn keep_draft(&self, key: &str, json: &str) -> Result<(), KeepError> {
        let draft = object(&[("key", key.into()), ("json", json.into())]).map_err(KeepError::of)?;
        self.on_drafts(|drafts| drafts.put(&draft).map(|_| ()))
            .await
    }

    /// Throws a draft away.
    pub(super) async fn drop_draft(&self, key: &str) -> Result<(), KeepError> {
        self.on_drafts(|drafts| drafts.delete(&key.into()).map(|_| ()))
            .await
    }

    async fn on_drafts(
        &self,
        issue: impl FnOnce(&IdbObjectStore) -> Result<(), JsValue>,
    ) -> Result<(), KeepError> {
        let transaction = self.transaction(&[DRAFTS], "readwrite", false)?;
        let done = completed(&transaction);
        transaction
            .object_store(DRAFTS)
            .and_then(|drafts| issue(&drafts))
            // Ended at once: what was typed last is kept even when the page is left this moment.
            .and_then(|()| transaction.end_now())
            .map_err(KeepError::of)?;
        JsFuture::from(done)
            .await
            .map(|_| ())
            .map_err(KeepError::of)
    }

    /// The text of a draft.
    pub(super) async fn draft(&self, key: &str) -> Result<Option<String>, KeepError> {
        self.value(DRAFTS, key, "json").await
    }

    /// How many drafts are open.
    pub(super) async fn drafts(&self) -> Result<u32, KeepError> {
        let transaction = self.transaction(&[DRAFTS], "readonly", false)?;
        let request = transaction
            .object_store(DRAFTS)
            .and_then(|drafts| drafts.count())
            .map_err(KeepError::of)?;
        let found = answered(&request).await?;
        #[allow(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "a count of drafts"
        )]
        Ok(found.as_f64().unwrap_or_default() as u32)
    }

    /// A small value about this device.
    pub(super) async fn meta(&self, key: &str) -> Result<Option<String>, KeepError> {
        self.value(META, key, "value").await
    }

    /// The bytes of a picture.
    pub(super) async fn picture(&self, sha256: &str) -> Result<Option<Vec<u8>>, KeepError> {
        let found = self.row(PICTURES, sha256).await?;
        let bytes = field(&found, "bytes").filter(JsValue::is_object);
        Ok(bytes.map(|bytes| Uint8Array::new(&bytes).to_vec()))
    }

    /// Lets go of the connection.
    pub(super) fn close(&self) {
        self.0.close();
    }

    async fn value(
        &self,
        store: &str,
        key: &str,
        field: &str,
    ) -> Result<Option<String>, KeepError> {
        Ok(text(&self.row(store, key).await?, field))
    }

    async fn row(&self, store: &str, key: &str) -> Result<JsValue, KeepError> {
        let transaction = self.transaction(&[store], "readonly", false)?;
        let request = transaction
            .object_store(store)
            .and_then(|store| store.get(&JsValue::from_str(key)))
            .map_err(KeepError::of)?;
        answered(&request).await
    }

    fn transaction(&self, stores: &[&str], mode: &str, strict: bool) -> Result<Held, KeepError> {
        let names: Array = stores.iter().map(|name| JsValue::from_str(name)).collect();
        let durability = if strict { "strict" } else { "relaxed" };
        let options = object(&[("durability", durability.into())]).map_err(KeepError::of)?;
        Held::begin(&self.0, &names, mode, &options).map_err(KeepError::of)
    }
}

/// Puts a row and moves what it replaces to the past, by requests of this transaction alone.
fn put_row(records: &IdbObjectStore, past: &IdbObjectStore, row: &Row) -> Result<(), JsValue> {
    let replaced = records.get(&JsValue::from_str(&row.id))?;
    let (request, past) = (replaced.clone(), past.clone());
    let keep = Closure::once_into_js(move || {
        // A failing put aborts the whole transaction by itself.
        let _ = request
            .result()
            .map(|old| old.is_object().then(|| past.put(&old)));
    });
    replaced.set_onsuccess(Some(keep.unchecked_ref()));
    records.put(&object_of(row)?)?;
    Ok(())
}

/// The keys of an index that begin with one value, from an instant on.
fn prefix(first: &str, from: i64) -> Result<IdbKeyRange, JsValue> {
    #[allow(clippy::cast_precision_loss, reason = "milliseconds stay below 2^53")]
    let lower = if from == i64::MIN {
        f64::NEG_INFINITY
    } else {
        from as f64
    };
    let lowest = Array::of2(&first.into(), &lower.into());
    let highest = Array::of2(&first.into(), &f64::INFINITY.into());
    // An array is a key after every number and text, so it closes the range above every id.
    highest.push(&Array::new());
    IdbKeyRange::bound(&lowest, &highest)
}

/// Walks an index backwards and takes at most `limit` rows.
async fn newest(
    records: &IdbObjectStore,
    index: &str,
    first: &str,
    from: i64,
    limit: u32,
) -> Result<Vec<Row>, KeepError> {
    let index = records.index(index).map_err(KeepError::of)?;
    let range = prefix(first, from).map_err(KeepError::of)?;
    let request = index
        .open_cursor_with_range_and_direction(&range, IdbCursorDirection::Prev)
        .map_err(KeepError::of)?;
    let walked = Promise::new(&mut |resolve, reject| {
        let (request, found) = (request.clone(), Array::new());
        let walking = request.clone();
        let step = Closure::<dyn FnMut()>::new(move || {
            let cursor = walking
                .result()
                .ok()
                .and_then(|cursor| cursor.dyn_into::<IdbCursorWithValue>().ok());
            let more = cursor
                .filter(|_| found.length() < limit)
                .and_then(|cursor| {
                    found.push(&cursor.value().ok()?);
                    cursor.continue_().ok()
                });
            if more.is_none() {
                let _ = resolve.call1(&JsValue::NULL, &found);
            }
        });
        request.set_onsuccess(Some(step.into_js_value().unchecked_ref()));
        request.set_onerror(Some(&failing(&request, reject)));
    });
    let found: Array = JsFuture::from(walked)
        .await
        .map_err(KeepError::of)?
        .unchecked_into();
    Ok(found.iter().filter_map(|row| row_of(&row)).collect())
}

fn object(fields: &[(&str, JsValue)]) -> Result<JsValue, JsValue> {
    let object = Object::new();
    for (name, value) in fields {
        Reflect::set(&object, &JsValue::from_str(name), value)?;
    }
    Ok(object.into())
}

fn object_of(row: &Row) -> Result<JsValue, JsValue> {
    #[allow(clippy::cast_precision_loss, reason = "milliseconds stay below 2^53")]
    let at = row.at as f64;
    object(&[
        ("id", row.id.as_str().into()),
        ("kind", row.kind.as_str().into()),
        ("yard", row.yard.as_str().into()),
        ("subject", row.subject.as_str().into()),
        ("at", at.into()),
        ("stamp", row.stamp.as_str().into()),
        ("json", row.json.as_str().into()),
    ])
}

/// An array of bytes and no blob: some browsers lose the file behind a blob.
fn object_of_picture(picture: &PictureRow) -> Result<JsValue, JsValue> {
    object(&[
        ("sha256", picture.sha256.as_str().into()),
        (
            "bytes",
            Uint8Array::from(picture.bytes.as_slice()).buffer().into(),
        ),
    ])
}

fn field(object: &JsValue, name: &str) -> Option<JsValue> {
    Reflect::get(object, &JsValue::from_str(name)).ok()
}

fn text(object: &JsValue, name: &str) -> Option<String> {
    field(object, name)?.as_string()
}

fn row_of(object: &JsValue) -> Option<Row> {
    let at = field(object, "at")?.as_f64()?;
    Some(Row {
        id: text(object, "id")?,
        kind: text(object, "kind")?,
        yard: text(object, "yard")?,
        subject: text(object, "subject")?,
        #[allow(
            clippy::cast_possible_truncation,
            reason = "milliseconds stay below 2^53"
        )]
        at: at as i64,
        stamp: text(object, "stamp")?,
        json: text(object, "json")?,
    })
}
