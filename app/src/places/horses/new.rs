//! A new animal.

use crate::device::clock::{self, DeviceZone};
use crate::form::Form;
use crate::parts::{
    Action, ActionRow, Back, Choice, Field, Frame, FrameKind, Keyboard, Offer, Press, Sentence,
};
use crate::places::{Saving, draft_line};
use crate::world::World;
use leptos::prelude::*;
use tussock_core::animal::{AnimalId, Kind};
use tussock_core::units::Zone;
use tussock_flow::forms::animal::{NewAnimal, Wrong};
use tussock_flow::routes::Route;
use tussock_flow::words::{AnimalWords, English, HorsesWords, UnitWords};

const KINDS: [(Kind, &str); 5] = [
    (Kind::Horse, "horse"),
    (Kind::Pony, "pony"),
    (Kind::Miniature, "miniature"),
    (Kind::Donkey, "donkey"),
    (Kind::Mule, "mule"),
];

/// A new animal: name, kind, height and year of birth.
#[component]
pub fn New() -> impl IntoView {
    let world = World::here();
    let words = English::default();
    let form = Form::open(world, Route::NewHorse.to_string());
    let wrong = RwSignal::new(Vec::<Wrong>::new());
    let failed = RwSignal::new(false);
    let busy = RwSignal::new(false);
    let kind_text = form.text("kind");
    let kind = Signal::derive(move || {
        KINDS
            .iter()
            .find(|(_, key)| kind_text.with(|text| text == key))
            .map(|(kind, _)| *kind)
    });
    let say = move |which: fn(&Wrong) -> bool| {
        Signal::derive(move || {
            wrong
                .get()
                .into_iter()
                .find(which)
                .map(|wrong| match wrong {
                    Wrong::NoName => words.name_wanted().to_owned(),
                    Wrong::NoKind => words.choice_wanted().to_owned(),
                    Wrong::Height(error) | Wrong::Born(error) => words.parse_error(&error),
                })
        })
    };
    let save = Callback::new(move |()| {
        let typed = NewAnimal {
            name: form.now("name"),
            kind: kind.get_untracked(),
            height: form.now("height"),
            born: form.now("born"),
        };
        let id = AnimalId(form.id("id"));
        match typed.act(&id, DeviceZone.to_local(clock::now()).date) {
            Err(faults) => wrong.set(faults),
            Ok(act) => {
                wrong.set(Vec::new());
                busy.set(true);
                leptos::task::spawn_local(async move {
                    let done = form.save(act).await;
                    busy.try_set(false);
                    if done.is_ok() {
                        world.go(&Route::Weigh(id));
                    } else {
                        failed.try_set(true);
                    }
                });
            }
        }
    });
    let foot = move || {
        view! {
            <Saving failed=failed />
            <ActionRow back=Back { name: words.back().into(), press: Press::from(Route::Horses.to_string()) }>
                <Action says=words.save_and_weigh() press=save busy=busy />
            </ActionRow>
        }
    };
    let offers = KINDS
        .iter()
        .map(|(kind, _)| Offer::new(*kind, words.kind(*kind)))
        .collect();
    view! {
        <Frame kind=FrameKind::Flow what=words.horses() foot=foot>
            <Sentence said=words.who_is_it() />
            {draft_line(form)}
            <Field
                label=words.name()
                value=form.text("name")
                on_input=form.typed("name")
                error=say(|wrong| matches!(wrong, Wrong::NoName))
            />
            <Choice
                legend=words.what_is_it()
                offers=offers
                chosen=kind
                on_choose=move |kind: Kind| {
                    if let Some((_, key)) = KINDS.iter().find(|(offered, _)| *offered == kind) {
                        form.set("kind", (*key).to_owned());
                    }
                }
                hint=say(|wrong| matches!(wrong, Wrong::NoKind))
            />
            <Field
                label=words.height_label()
                hint=words.height_hint()
                value=form.text("height")
                on_input=form.typed("height")
                error=say(|wrong| matches!(wrong, Wrong::Height(_)))
                keyboard=Keyboard::Decimal
            />
            <Field
                label=words.born()
                hint=words.born_hint()
                value=form.text("born")
                on_input=form.typed("born")
                error=say(|wrong| matches!(wrong, Wrong::Born(_)))
                keyboard=Keyboard::Numeric
            />
        </Frame>
    }
}
