//! Thirty heights across a paddock, one after another, with the pad; or the clicks of a plate.

use crate::form::Form;
use crate::keep::KeepError;
use crate::parts::{
    Action, ActionRow, Back, Choice, Entry, Frame, FrameKind, Key, Offer, Pad, PadCell, PadSwitch,
    Press, Quiet, QuietRow, Rank, ReadingSlot, Sentence,
};
use crate::places::{Saving, Unread, draft_line};
use crate::world::{Reading, World};
use leptos::prelude::*;
use tussock_core::animal::PaddockId;
use tussock_flow::forms::delivery::{of_word, word_of};
use tussock_flow::forms::readings::{Taken, WAYS, Way, Wrong};
use tussock_flow::routes::Route;
use tussock_flow::shelf::Shelf;
use tussock_flow::views::fields::{needs, one};
use tussock_flow::words::{English, FieldWords, HorsesWords, NetsWords, PaddockWords, SwardWords};

/// Reading heights across a paddock.
#[component]
pub fn Readings(
    /// Which.
    paddock: PaddockId,
) -> impl IntoView {
    let world = World::here();
    // What was read yesterday is not what stands today.
    let form = Form::open_today(world, Route::Readings(paddock.clone()).to_string());
    let shelf = world.shelf(needs);
    let id = StoredValue::new(paddock);
    let name = Memo::new(move |_| match shelf.get() {
        Some(Ok(shelf)) => {
            id.with_value(|id| one(&shelf, id).map(|body| body.name.as_str().to_owned()))
        }
        _ => None,
    });
    let taken = Memo::new(move |_| {
        let way = form.held("way").and_then(|word| of_word(&WAYS, &word));
        Taken::of(
            way.unwrap_or(Way::Cm),
            &form.held("taken").unwrap_or_default(),
        )
    });
    Walk {
        world,
        form,
        shelf,
        id,
        name,
        taken,
        wrong: RwSignal::new(None),
        failed: RwSignal::new(false),
        busy: RwSignal::new(false),
        entry: Entry::new(),
    }
    .screen()
}

#[derive(Clone, Copy)]
struct Walk {
    world: World,
    form: Form,
    shelf: Reading<Result<Shelf, KeepError>>,
    id: StoredValue<PaddockId>,
    name: Memo<Option<String>>,
    taken: Memo<Taken>,
    wrong: RwSignal<Option<Wrong>>,
    failed: RwSignal<bool>,
    busy: RwSignal<bool>,
    entry: Entry,
}

impl Walk {
    fn screen(self) -> AnyView {
        let words = English::default();
        let opening = Signal::derive(move || self.shelf.with(Option::is_none));
        let here = Memo::new(move |_| self.name.with(Option::is_some));
        let head = Signal::derive(move || match self.name.get() {
            Some(name) => words.readings_of(&name),
            None => words.paddock().to_owned(),
        });
        let back = self
            .id
            .with_value(|id| Route::Field(id.clone()).to_string());
        let foot = move || {
            view! {
                <Saving failed=self.failed />
                <Show when=move || here.get()>{move || self.pad()}</Show>
                <ActionRow back=Back { name: words.back().into(), press: Press::from(back.clone()) }>
                    {move || self.action(here.get())}
                </ActionRow>
            }
        };
        let inside = move || {
            if here.get() {
                self.reading()
            } else {
                let said = if opening.get() {
                    words.opening()
                } else {
                    words.no_such_field()
                };
                view! { <Sentence said /> }.into_any()
            }
        };
        view! {
            <Frame kind=FrameKind::Flow what=head foot=foot>
                <Unread shelf=self.shelf />
                {inside}
            </Frame>
        }
        .into_any()
    }

    fn reading(self) -> AnyView {
        let words = English::default();
        let (form, entry, taken) = (self.form, self.entry, self.taken);
        let line = Signal::derive(move || {
            taken.with(|taken| words.reading_line(taken.way, taken.texts.len() + 1))
        });
        let unit = Signal::derive(move || taken.with(|taken| words.way_unit(taken.way).to_owned()));
        let note = Signal::derive(move || {
            Some(match self.wrong.get() {
                Some(wrong) => words.reading_not_taken(&wrong),
                None => words.readings_left(taken.with(Taken::left)),
            })
        });
        let summed = move || {
            let summed = taken.with(Taken::summed)?;
            Some(words.summed(&summed))
        };
        let last = move || {
            taken.with(|taken| {
                let from = taken.texts.len().saturating_sub(5);
                let last: Vec<String> = taken.texts.iter().skip(from).cloned().collect();
                last.join(", ")
            })
        };
        let any = Memo::new(move |_| taken.with(|taken| !taken.texts.is_empty()));
        let back = Callback::new(move |()| {
            self.wrong.set(None);
            form.tapped("taken", taken.get_untracked().taken_back().text());
            entry.focus();
        });
        Effect::new(move |_| {
            // Once it is drawn: the keys of a keyboard type into the slot at once.
            request_animation_frame(move || entry.focus());
        });
        let save_so_far =
            Signal::derive(move || words.save_readings(taken.with(|taken| taken.texts.len())));
        let how = move || taken.with(|taken| words.how_to_read(taken.way));
        view! {
            <ReadingSlot
                line
                unit
                value=form.text("reading")
                on_input=Callback::new(move |text| self.type_in(text))
                on_enter=Callback::new(move |()| self.next())
                entry
                note
                rank=Rank::Sentence
            />
            {draft_line(form)}
            <p role="status">{summed}</p>
            <p class="soft">{last}</p>
            <Show when=move || any.get() fallback=move || self.way()>
                <QuietRow>
                    <Quiet says=words.take_back_last() press=back />
                    <Quiet says=save_so_far press=Callback::new(move |()| self.save()) />
                    <PadSwitch entry phone=words.phone_keys() pad=words.these_keys() />
                </QuietRow>
            </Show>
            <p class="soft">{how}</p>
        }
        .into_any()
    }

    /// In what it is read: asked before the first reading, for the rest goes the same way.
    fn way(self) -> AnyView {
        let words = English::default();
        let form = self.form;
        let offers = WAYS
            .iter()
            .map(|(way, _)| Offer::new(*way, words.way(*way)))
            .collect();
        view! {
            <Choice
                legend=words.way_asked()
                offers=offers
                chosen=Signal::derive(move || Some(self.taken.with(|taken| taken.way)))
                on_choose=move |way: Way| form.set("way", word_of(&WAYS, Some(way)))
            />
        }
        .into_any()
    }

    fn pad(self) -> AnyView {
        let words = English::default();
        let value = self.form.text("reading");
        view! {
            <Pad
                name=words.pad()
                cells=PadCell::number(".", words.point(), words.erase())
                on_key=Callback::new(move |key: Key| self.type_in(key.typed(&value.get_untracked())))
                entry=self.entry
            />
        }
        .into_any()
    }

    /// The next reading until there are enough, then saving them.
    fn action(self, here: bool) -> AnyView {
        let words = English::default();
        if !here {
            return view! { <Action says=words.to_grass_today() press=Route::Paddock.to_string() /> }
                .into_any();
        }
        let enough = Memo::new(move |_| {
            let typed = self
                .form
                .text("reading")
                .with(|text| !text.trim().is_empty());
            !typed && self.taken.with(|taken| taken.left() == 0)
        });
        let says = Signal::derive(move || {
            if enough.get() {
                words.save_readings(self.taken.with(|taken| taken.texts.len()))
            } else {
                words.next_reading().to_owned()
            }
        });
        let go_on = Callback::new(move |()| {
            if enough.get_untracked() {
                self.save();
            } else {
                self.next();
            }
        });
        view! { <Action says press=go_on busy=self.busy /> }.into_any()
    }

    fn type_in(self, text: String) {
        self.wrong.set(None);
        self.form.set("reading", text);
    }

    /// Takes what stands in the slot, and keeps it at once.
    fn next(self) {
        let typed = self.form.now("reading");
        match self.taken.get_untracked().with(&typed) {
            Ok(taken) => {
                self.wrong.set(None);
                self.form.set("reading", String::new());
                self.form.tapped("taken", taken.text());
                self.entry.focus();
            }
            Err(wrong) => self.wrong.set(Some(wrong)),
        }
    }

    fn save(self) {
        if self.busy.get_untracked() {
            return;
        }
        let typed = self.form.now("reading");
        let taken = self.taken.get_untracked();
        // What still stands in the slot was read too.
        let all = if typed.trim().is_empty() {
            Ok(taken)
        } else {
            taken.with(&typed)
        };
        let paddock = self.id.get_value();
        let act = all.and_then(|all| all.act(&paddock, &self.form.id("id")));
        match act {
            Ok(act) => {
                self.wrong.set(None);
                self.failed.set(false);
                self.busy.set(true);
                leptos::task::spawn_local(async move {
                    let done = self.form.save(act).await;
                    self.busy.try_set(false);
                    if done.is_ok() {
                        self.world.go(&Route::Field(paddock));
                    } else {
                        self.failed.try_set(true);
                    }
                });
            }
            Err(wrong) => self.wrong.set(Some(wrong)),
        }
    }
}
