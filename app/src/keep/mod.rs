//! The disk is the state. Two real stores stand behind one door: IndexedDB, and memory for private windows.
//!
//! One batch writer, strict for what a person typed; "saved" is what [`Keep::write`] coming back means. A lost
//! connection is opened again and the batch tried once more. Drafts are kept while typing and cleared in the saving
//! transaction. After a write the touched subjects are told to this tab and, by a channel, to the others.

mod memory;
mod raw;
mod shape;
mod tabs;
mod transaction;
mod wait;

use memory::Memory;
use raw::Raw;
use std::cell::{Cell, RefCell};
use std::fmt;
use std::rc::Rc;
use tussock_flow::rows::{Draft, Range, Row, Writes};
use wasm_bindgen::{JsCast, JsValue};

/// The text an open request that another tab blocks is refused with.
const BLOCKED: &str = "TussockBlocked";

/// Why the disk did not do it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum KeepError {
    /// This window has no disk for us.
    NoDisk,
    /// Another tab holds an older shape of the database.
    Blocked,
    /// The database was written by a newer version of the app.
    NewerVersion,
    /// The disk is full.
    Full,
    /// The connection was lost.
    Lost,
    /// The text on the disk is not what this version writes.
    Unreadable(String),
    /// Something else, by the browser's name for it.
    Other(String),
}

impl KeepError {
    fn of(error: JsValue) -> Self {
        if error.as_string().as_deref() == Some(BLOCKED) {
            return Self::Blocked;
        }
        let name = error
            .dyn_ref::<web_sys::DomException>()
            .map(web_sys::DomException::name)
            .or_else(|| error.as_string())
            .unwrap_or_else(|| "unnamed".to_owned());
        match name.as_str() {
            "QuotaExceededError" => Self::Full,
            "VersionError" => Self::NewerVersion,
            "InvalidStateError" | "UnknownError" => Self::Lost,
            _ => Self::Other(name),
        }
    }
}

/// By the name a browser gives it, for a person who asks for help.
impl fmt::Display for KeepError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::NoDisk => "NoDisk",
            Self::Blocked => BLOCKED,
            Self::NewerVersion => "VersionError",
            Self::Full => "QuotaExceededError",
            Self::Lost => "InvalidStateError",
            Self::Unreadable(text) | Self::Other(text) => text,
        })
    }
}

/// What happened elsewhere.
type Told = Rc<RefCell<Vec<Box<dyn Fn(&[String])>>>>;

enum Store {
    Disk {
        name: String,
        raw: RefCell<Option<Raw>>,
        lost: Rc<Cell<bool>>,
    },
    Memory(RefCell<Memory>),
}

/// The store of this window.
#[derive(Clone)]
pub struct Keep {
    store: Rc<Store>,
    told: Told,
    tabs: Rc<Option<tabs::Tabs>>,
}

impl Keep {
    /// Opens the database of this name on the disk.
    pub async fn on_disk(name: &str) -> Result<Self, KeepError> {
        let lost = Rc::new(Cell::new(false));
        let raw = open(name, &lost).await?;
        let told = Told::default();
        let tabs = tabs::Tabs::open(name, told.clone());
        let store = Rc::new(Store::Disk {
            name: name.to_owned(),
            raw: RefCell::new(Some(raw)),
            lost,
        });
        let left = Rc::downgrade(&store);
        transaction::on_leaving(move || {
            if let Some(Store::Disk { raw, .. }) = left.upgrade().as_deref()
                && let Some(raw) = raw.borrow_mut().take()
            {
                raw.close();
            }
        });
        Ok(Self {
            store,
            told,
            tabs: Rc::new(tabs),
        })
    }

    /// A store in memory: gone with the page.
    pub fn in_memory() -> Self {
        Self {
            store: Rc::new(Store::Memory(RefCell::default())),
            told: Told::default(),
            tabs: Rc::new(None),
        }
    }

    /// Whether what is kept here is gone with the page.
    pub fn vanishes(&self) -> bool {
        matches!(*self.store, Store::Memory(_))
    }

    /// Has `hear` called with the touched subjects after every write, here or in another tab.
    pub fn listen(&self, hear: impl Fn(&[String]) + 'static) {
        self.told.borrow_mut().push(Box::new(hear));
    }

    /// Writes a batch as a whole. When this comes back well, it is on the disk.
    pub async fn write(&self, writes: &Writes) -> Result<(), KeepError> {
        match &*self.store {
            Store::Memory(memory) => memory.borrow_mut().write(writes),
            Store::Disk { .. } => {
                let first = self.raw().await?.write(writes).await;
                if first == Err(KeepError::Lost) {
                    self.reopen().await?.write(writes).await?;
                } else {
                    first?;
                }
            }
        }
        let touched = writes.touched();
        if let Some(tabs) = &*self.tabs {
            tabs.tell(&touched);
        }
        for hear in self.told.borrow().iter() {
            hear(&touched);
        }
        Ok(())
    }

    /// Reads a bounded range, newest first.
    pub async fn read(&self, range: &Range) -> Result<Vec<Row>, KeepError> {
        match &*self.store {
            Store::Memory(memory) => Ok(memory.borrow().read(range)),
            Store::Disk { .. } => match self.raw().await?.read(range).await {
                Err(KeepError::Lost) => self.reopen().await?.read(range).await,
                answer => answer,
            },
        }
    }

    /// How many records there are of a kind.
    pub async fn count(&self, kind: &str) -> Result<u32, KeepError> {
        match &*self.store {
            Store::Memory(memory) => Ok(memory.borrow().count(kind)),
            Store::Disk { .. } => match self.raw().await?.count(kind).await {
                Err(KeepError::Lost) => self.reopen().await?.count(kind).await,
                answer => answer,
            },
        }
    }

    /// Keeps a draft.
    pub async fn keep_draft(&self, draft: &Draft) -> Result<(), KeepError> {
        let json = serde_json::to_string(draft)
            .map_err(|error| KeepError::Unreadable(error.to_string()))?;
        match &*self.store {
            Store::Memory(memory) => memory.borrow_mut().keep_draft(&draft.key, &json),
            Store::Disk { .. } => match self.raw().await?.keep_draft(&draft.key, &json).await {
                Err(KeepError::Lost) => self.reopen().await?.keep_draft(&draft.key, &json).await?,
                answer => answer?,
            },
        }
        Ok(())
    }

    /// The draft of a form, if one was left.
    pub async fn draft(&self, key: &str) -> Result<Option<Draft>, KeepError> {
        let json = match &*self.store {
            Store::Memory(memory) => memory.borrow().draft(key),
            Store::Disk { .. } => self.raw().await?.draft(key).await?,
        };
        // A draft that this version cannot read is left where it is and the form starts empty.
        Ok(json.and_then(|json| serde_json::from_str(&json).ok()))
    }

    /// Throws a draft away.
    pub async fn drop_draft(&self, key: &str) -> Result<(), KeepError> {
        match &*self.store {
            Store::Memory(memory) => memory.borrow_mut().drop_draft(key),
            Store::Disk { .. } => self.raw().await?.drop_draft(key).await?,
        }
        Ok(())
    }

    /// How many drafts are open, in every tab.
    pub async fn drafts(&self) -> Result<u32, KeepError> {
        match &*self.store {
            Store::Memory(memory) => Ok(memory.borrow().drafts()),
            Store::Disk { .. } => self.raw().await?.drafts().await,
        }
    }

    /// A small value about this device.
    pub async fn meta(&self, key: &str) -> Result<Option<String>, KeepError> {
        match &*self.store {
            Store::Memory(memory) => Ok(memory.borrow().meta(key)),
            Store::Disk { .. } => self.raw().await?.meta(key).await,
        }
    }

    /// The bytes of a picture; `None` when it is not on the disk.
    pub async fn picture(&self, sha256: &str) -> Result<Option<Vec<u8>>, KeepError> {
        match &*self.store {
            Store::Memory(memory) => Ok(memory.borrow().picture(sha256)),
            Store::Disk { .. } => match self.raw().await?.picture(sha256).await {
                Err(KeepError::Lost) => self.reopen().await?.picture(sha256).await,
                answer => answer,
            },
        }
    }

    /// The connection, opened again when it was lost.
    async fn raw(&self) -> Result<Raw, KeepError> {
        let Store::Disk { raw, lost, .. } = &*self.store else {
            return Err(KeepError::NoDisk);
        };
        let held = raw.borrow().clone();
        match held {
            Some(raw) if !lost.get() => Ok(raw),
            _ => self.reopen().await,
        }
    }

    async fn reopen(&self) -> Result<Raw, KeepError> {
        let Store::Disk { name, raw, lost } = &*self.store else {
            return Err(KeepError::NoDisk);
        };
        if let Some(old) = raw.borrow_mut().take() {
            old.close();
        }
        lost.set(false);
        let opened = open(name, lost).await?;
        *raw.borrow_mut() = Some(opened.clone());
        Ok(opened)
    }
}

async fn open(name: &str, lost: &Rc<Cell<bool>>) -> Result<Raw, KeepError> {
    let flag = lost.clone();
    raw::open(name, move || flag.set(true)).await
}

/// Deletes a database of this app by name. It is gone when every tab has let go of it.
pub fn delete(name: &str) {
    if let Some(Ok(Some(factory))) = web_sys::window().map(|window| window.indexed_db()) {
        // A database that cannot be deleted stays, and its banner with it.
        let _ = factory.delete_database(name);
    }
}
