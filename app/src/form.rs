//! A form whose raw text is kept while it is typed, and comes back after a kill.
//!
//! The draft stands under the form's address. It is kept at most half a second after a key, and at once when the page is
//! hidden; it is cleared in the transaction that saves what it held. A draft in which nothing is typed is dropped.

use crate::device::clock;
use crate::keep::KeepError;
use crate::world::{Failed, World};
use leptos::prelude::*;
use std::collections::{BTreeMap, BTreeSet};
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
    /// The fields nobody typed.
    made: StoredValue<BTreeSet<String>>,
    /// When it was last typed in; `None` while it is fresh.
    typed_at: StoredValue<Option<Instant>>,
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
            made: StoredValue::new(BTreeSet::new()),
            typed_at: StoredValue::new(None),
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
                if draft.is_blank() {
                    // As above.
                    let _ = world.drop_draft(&key).await;
                    return;
                }
                form.found.try_set(Some(Instant::from_ms(draft.at)));
                form.made.try_update_value(|made| made.extend(draft.made));
                form.typed_at.try_update_value(|at| {
                    at.get_or_insert(Instant::from_ms(draft.at));
                });
                form.fields.try_update(|fields| {
                    for (name, text) in draft.fields {
                        fields.entry(name).or_insert(text);
                    }
                });
            }
        });
        window_event_listener_untyped("visibilitychange", move |_| {
            form.keep_now();
            // The page itself may be taken up again on another day.
            if let Some(Some(at)) = form.typed_at.try_get_value()
                && !holds(at)
            {
                form.throw_away();
            }
        });
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
        self.typed_at.set_value(Some(clock::now()));
        self.fields.update(|fields| {
            fields.insert(name.to_owned(), text);
        });
        if !self.waiting.get_value() {
            self.waiting.set_value(true);
            set_timeout(move || self.keep_now(), KEPT_AFTER);
        }
    }

    /// Sets a field by a tap that stands for an instant, and keeps it at once: what was tapped is on the disk before the
    /// phone goes back into a pocket.
    pub fn tapped(self, name: &str, text: String) {
        self.set(name, text);
        self.keep_now();
    }

    /// An id that stays the same for this form until it is saved: saving twice saves one record.
    pub fn id(self, name: &str) -> String {
        let held = self.now(name);
        if !held.is_empty() {
            return held;
        }
        let fresh = crate::device::ids::new();
        self.made.update_value(|made| {
            made.insert(name.to_owned());
        });
        self.fields.update_untracked(|fields| {
            fields.insert(name.to_owned(), fresh.clone());
        });
        fresh
    }

    /// Empties the form and drops its draft from the disk.
    pub fn throw_away(self) {
        self.empty();
        let (world, key) = (self.world, self.key.try_get_value());
        leptos::task::spawn_local(async move {
            if let Some(key) = key {
                // What the disk does not drop comes back with the form and can be thrown away again.
                let _ = world.drop_draft(&key).await;
            }
        });
    }

    /// Empties the form after a save that stays on the screen. Nothing is written: its draft went with the save.
    pub fn empty(self) {
        self.waiting.try_set_value(false);
        self.typed_at.try_set_value(None);
        self.made.try_update_value(BTreeSet::clear);
        self.found.try_set(None);
        self.fields.try_update(BTreeMap::clear);
    }

    /// Does the act that saves this form. Its draft is cleared in the same transaction, so a key that is still waiting is
    /// kept before it and may not write meanwhile; when the act fails, what was typed is kept as before.
    ///
    /// # Errors
    /// Those of [`World::act`].
    pub async fn save(self, act: Act) -> Result<Saved, Failed> {
        if let Some(draft) = self.due_draft() {
            // A phone that dies before the act is on the disk comes back with every key.
            let _ = keep(self.world, draft).await;
        }
        let done = self.world.act(act, Some(self.key.get_value())).await;
        if done.is_ok() {
            // Untracked: most forms leave the screen now and need not be seen empty.
            self.fields.try_update_untracked(BTreeMap::clear);
            self.made.try_update_value(BTreeSet::clear);
            self.typed_at.try_set_value(None);
            self.found.try_set(None);
        } else {
            self.waiting.try_set_value(true);
            self.keep_now();
        }
        done
    }

    /// The draft that waits to be kept, which waits no longer.
    fn due_draft(self) -> Option<Draft> {
        if self.waiting.try_get_value() != Some(true) {
            return None;
        }
        self.waiting.set_value(false);
        Some(Draft {
            key: self.key.get_value(),
            at: clock::now().to_ms(),
            fields: self.fields.get_untracked(),
            made: self.made.get_value(),
        })
    }

    fn keep_now(self) {
        let Some(draft) = self.due_draft() else {
            return;
        };
        let world = self.world;
        leptos::task::spawn_local(async move {
            // What cannot be kept as a draft is still on the screen, and saving it says what is wrong.
            let _ = keep(world, draft).await;
        });
    }
}

/// Keeps a draft; one that holds nothing is dropped.
async fn keep(world: World, draft: Draft) -> Result<(), KeepError> {
    if draft.is_blank() {
        world.drop_draft(&draft.key).await
    } else {
        world.keep_draft(draft).await
    }
}
