//! The details of one animal.

use crate::device::clock;
use crate::form::Form;
use crate::parts::{
    Action, ActionRow, Back, Choice, Field as TextField, Frame, FrameKind, Keyboard, Offer, Press,
    Sentence,
};
use crate::places::{Saving, Unread, draft_line};
use crate::world::World;
use leptos::prelude::*;
use tussock_core::animal::{AnimalId, Kind};
use tussock_core::log::bodies::AnimalV2;
use tussock_core::sources::RecordId;
use tussock_core::units::Zone;
use tussock_flow::forms::details::{Details as Typed, Field, KINDS, Wrong, value_of};
use tussock_flow::routes::Route;
use tussock_flow::views::{details, horses};
use tussock_flow::words::{DetailsWords, English, HorsesWords, UnitWords};

/// The form over what holds, and what is wrong with it.
#[derive(Clone, Copy)]
struct Sheet {
    words: English,
    form: Form,
    held: Memo<Option<AnimalV2>>,
    wrong: RwSignal<Vec<Wrong>>,
}

impl Sheet {
    /// Every field as it stands: as it holds, unless somebody touched it.
    fn typed(self) -> Option<Typed> {
        let held = Typed::of(&self.held.get()?);
        Some(
            Field::ALL
                .into_iter()
                .fold(held, |typed, field| match self.form.held(field.key()) {
                    Some(text) => typed.with(field, text),
                    None => typed,
                }),
        )
    }

    fn text(self, field: Field) -> Signal<String> {
        Signal::derive(move || {
            self.typed()
                .map(|typed| typed.text(field).to_owned())
                .unwrap_or_default()
        })
    }

    fn error(self, field: Field) -> Signal<Option<String>> {
        Signal::derive(move || {
            self.wrong
                .get()
                .into_iter()
                .find(|wrong| wrong.field() == field)
                .map(|wrong| match wrong {
                    Wrong::Name => self.words.name_wanted().to_owned(),
                    Wrong::Parse(_, error) => self.words.parse_error(&error),
                    Wrong::Date(_) => self.words.day_wanted().to_owned(),
                })
        })
    }
}

/// What is known of one animal, to correct or complete.
#[component]
pub fn Details(
    /// Which.
    animal: AnimalId,
) -> impl IntoView {
    let world = World::here();
    let words = English::default();
    let id = StoredValue::new(animal.clone());
    let shelf = world.shelf(move || horses::one_needs(&id.get_value()));
    let sheet = Sheet {
        words,
        form: Form::open(world, Route::Details(animal.clone()).to_string()),
        held: Memo::new(move |_| match shelf.get() {
            Some(Ok(shelf)) => details::held(&shelf, &id.get_value()),
            _ => None,
        }),
        wrong: RwSignal::new(Vec::new()),
    };
    let form = sheet.form;
    let failed = RwSignal::new(false);
    let busy = RwSignal::new(false);
    let save = Callback::new(move |()| {
        let (Some(held), Some(typed)) = (sheet.held.get_untracked(), untrack(|| sheet.typed()))
        else {
            return;
        };
        let animal = id.get_value();
        let today = clock::DeviceZone.to_local(clock::now()).date;
        match typed.act(&held, &RecordId(animal.0.clone()), today) {
            Err(faults) => sheet.wrong.set(faults),
            Ok(act) => {
                sheet.wrong.set(Vec::new());
                busy.set(true);
                leptos::task::spawn_local(async move {
                    let done = form.save(act).await;
                    busy.try_set(false);
                    if done.is_ok() {
                        world.go(&Route::Horse(animal));
                    } else {
                        failed.try_set(true);
                    }
                });
            }
        }
    });
    let back = Route::Horse(animal).to_string();
    let foot = move || {
        view! {
            <div role="alert">
                <Show when=move || sheet.wrong.with(|wrong| !wrong.is_empty())>
                    <p class="error">{words.look_above()}</p>
                </Show>
            </div>
            <Saving failed=failed />
            <ActionRow back=Back { name: words.back().into(), press: Press::from(back.clone()) }>
                <Action says=words.save_details() press=save busy=busy />
            </ActionRow>
        }
    };
    let name = Signal::derive(move || {
        sheet
            .held
            .get()
            .map(|held| held.name.as_str().to_owned())
            .unwrap_or_default()
    });
    let there = Memo::new(move |_| sheet.held.with(Option::is_some));
    let fields = move || {
        there.get().then(|| {
            Field::ALL
                .into_iter()
                .map(|field| view! { <OneField sheet field /> })
                .collect_view()
        })
    };
    view! {
        <Frame kind=FrameKind::Flow what=name foot=foot>
            <Sentence said=Signal::derive(move || words.details_of(&name.get())) />
            <Unread shelf />
            {draft_line(form)}
            {fields}
        </Frame>
    }
}

/// One field: keys, or typed text; not asked where the others make it needless.
#[component]
fn OneField(sheet: Sheet, field: Field) -> impl IntoView {
    let words = sheet.words;
    let state = sheet.text(Field::State);
    let laminitis = sheet.text(Field::Laminitis);
    let insulin = sheet.text(Field::Insulin);
    let kind_text = sheet.text(Field::Kind);
    let kind = Memo::new(move |_| value_of(&KINDS, &kind_text.get()).unwrap_or(Kind::Horse));
    let asked =
        Memo::new(move |_| details::asked(field, &state.get(), &laminitis.get(), &insulin.get()));
    let text = sheet.text(field);
    let hint = words.details_hint(field).map(str::to_owned);
    move || {
        if !asked.get() {
            return ().into_any();
        }
        match details::keys(field, kind.get(), &words) {
            Some(keys) => {
                let offers = keys
                    .into_iter()
                    .map(|key| Offer::new(key.key, key.word).with(key.second))
                    .collect::<Vec<Offer<&'static str>>>();
                let values: Vec<&'static str> = offers.iter().map(|offer| offer.value).collect();
                let chosen = Signal::derive(move || {
                    let text = text.get();
                    values.iter().copied().find(|value| *value == text)
                });
                view! {
                    <Choice
                        legend=words.details_label(field)
                        offers=offers
                        chosen=chosen
                        on_choose=move |key: &'static str| sheet.form.set(field.key(), key.to_owned())
                        hint=hint.clone()
                    />
                }
                .into_any()
            }
            None => view! {
                <TextField
                    label=words.details_label(field)
                    hint=hint.clone()
                    value=text
                    on_input=sheet.form.typed(field.key())
                    error=sheet.error(field)
                    keyboard=if matches!(field, Field::Height | Field::Grown) { Keyboard::Decimal } else { Keyboard::Text }
                />
            }
            .into_any(),
        }
    }
}
