//! A form whose raw text is kept while it is typed, and comes back after a kill.
//!
//! The draft stands under the form's address. It is kept at most half a second after a key, and at once when the page is
//! hidden; it is cleared in the transaction that saves what it held.

use crate::device::clock;
use crate::world::{Failed, World};
use leptos::prelude::*;
use std::collections::BTreeMap;
use std::time::Duration;
use tussock_core::units::{Instant, Zone};
use tussock_flow::acts::{Act, Saved};
use tussock_flow::rows::Draft;

/// The longest time a key waits to be kept.
const KEPT_AFTER: Duration = Duration::from_millis(400);

/// A form.
#[derive(Clone, Copy)]
pub struct Form {
    key: StoredValue<String>,
    fields: RwSignal<BTreeMap<String, String>>,
    /// When the draft that was found was last typed in; `None` for a fresh form.
    pub found: RwSignal<Option<Instant>>,
    waiting: StoredValue<bool>,
    world: World,
}

impl Form {
    /// Opens the form of an address and brings its draft back. The screen is drawn at once; the draft fills in what the
    /// person has not typed meanwhile.
    pub fn open(world: World, key: String) -> Self {
        Self::open_when(world, key, |_| true)
    }

    /// Opens a form of what is seen on the animal now: a draft of another day is thrown away, for nobody looked today.
    pub fn open_today(world: World, key: String) -> Self {
        Self::open_when(world, key, |at| {
            let day = |at| clock::DeviceZone.to_local(at).date;
            day(at) == day(clock::now())
        })
    }

    fn open_when(world: World, key: String, holds: fn(Instant) -> bool) -> Self {
        let form = Self {
            key: StoredValue::new(key.clone()),
            fields: RwSignal::new(BTreeMap::new()),
            found: RwSignal::new(None),
            waiting: StoredValue::new(false),
            world,
        };
        leptos::task::spawn_local(async move {
            // A disk that does not answer leaves an empty form; saving will say what is wrong.
            if let Ok(Some(draft)) = world.draft(&key).await {
                if !holds(Instant::from_ms(draft.at)) {
                    // What is not dropped now is not shown either, and goes with the next save.
                    let _ = world.drop_draft(&key).await;
                    return;
                }
                form.found.try_set(Some(Instant::from_ms(draft.at)));
                form.fields.try_update(|fields| {
                    for (name, text) in draft.fields {
                        fields.entry(name).or_insert(text);
                    }
                });
            }
        });
        window_event_listener_untyped("visibilitychange", move |_| form.keep_now());
        // Another screen within the half second after a key must not lose the key.
        on_cleanup(move || form.keep_now());
        form
    }

    /// The address the draft stands under.
    pub fn key(self) -> String {
        self.key.get_value()
    }

    /// The raw text of a field.
    pub fn text(self, name: &'static str) -> Signal<String> {
        Signal::derive(move || {
            self.fields
                .with(|fields| fields.get(name).cloned().unwrap_or_default())
        })
    }

    /// The raw text of a field as it changes; `None` while nobody touched it.
    pub fn held(self, name: &str) -> Option<String> {
        self.fields.with(|fields| fields.get(name).cloned())
    }

    /// The raw text of a field, now.
    pub fn now(self, name: &str) -> String {
        self.fields
            .with_untracked(|fields| fields.get(name).cloned().unwrap_or_default())
    }

    /// What keeps a field's text as it is typed.
    pub fn typed(self, name: &'static str) -> Callback<String> {
        Callback::new(move |text: String| self.set(name, text))
    }

    /// Sets a field, as by a key that chooses.
    pub fn set(self, name: &str, text: String) {
        self.fields.update(|fields| {
            fields.insert(name.to_owned(), text);
        });
        if !self.waiting.get_value() {
            self.waiting.set_value(true);
            set_timeout(move || self.keep_now(), KEPT_AFTER);
        }
    }

    /// An id that stays the same for this form until it is saved: saving twice saves one record.
    pub fn id(self, name: &str) -> String {
        let held = self.now(name);
        if !held.is_empty() {
            return held;
        }
        let fresh = crate::device::ids::new();
        self.fields.update_untracked(|fields| {
            fields.insert(name.to_owned(), fresh.clone());
        });
        fresh
    }

    /// Does the act that saves this form. Its draft is cleared in the same transaction, so no key that is still waiting may
    /// write it again meanwhile; when the act fails, what was typed is kept as before.
    ///
    /// # Errors
    /// Those of [`World::act`].
    pub async fn save(self, act: Act) -> Result<Saved, Failed> {
        self.waiting.try_set_value(false);
        let done = self.world.act(act, Some(self.key.get_value())).await;
        if done.is_ok() {
            self.fields.try_update_untracked(BTreeMap::clear);
        } else {
            self.waiting.try_set_value(true);
            self.keep_now();
        }
        done
    }

    fn keep_now(self) {
        let Some(true) = self.waiting.try_get_value() else {
            return;
        };
        self.waiting.set_value(false);
        let draft = Draft {
            key: self.key.get_value(),
            at: clock::now().to_ms(),
            fields: self.fields.get_untracked(),
        };
        if draft.fields.is_empty() {
            return;
        }
        let world = self.world;
        leptos::task::spawn_local(async move {
            // What cannot be kept as a draft is still on the screen, and saving it says what is wrong.
            let _ = world.keep_draft(draft).await;
        });
    }
}
