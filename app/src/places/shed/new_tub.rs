//! Starting a soak.

use super::work::{Work, yard};
use crate::device::clock::DeviceZone;
use crate::form::Form;
use crate::parts::{
    Action, ActionRow, Back, Caution, Choice, Field, Frame, FrameKind, Keyboard, Offer, Press,
    Sentence,
};
use crate::places::{Saving, Unread, draft_line};
use crate::world::World;
use leptos::prelude::*;
use tussock_core::animal::{LotId, TubId};
use tussock_core::soak::{Liquor, Water};
use tussock_flow::forms::tub::{self as form_of, InTub, Start, Wrong};
use tussock_flow::routes::Route;
use tussock_flow::views::shed::weather;
use tussock_flow::views::tub::{Wanted, lots, wanted, yard_tubs};
use tussock_flow::words::{English, HorsesWords, ShedWords, SoakWords, TubWords, UnitWords};

const WATERS: [(Water, &str); 3] = [
    (Water::TapWinter, "winter"),
    (Water::TapSummer, "summer"),
    (Water::HandHot, "hot"),
];
/// The key of a tub that is not there yet.
const NEW: &str = "new";

/// A new soak: for whom, from which hay, how much, in what water and how long.
#[component]
pub fn NewTub() -> impl IntoView {
    let world = World::here();
    let words = English::default();
    let form = Form::open(world, Route::NewTub.to_string());
    let work = Work::of(world);
    let wrong = RwSignal::new(Vec::<Wrong>::new());
    let failed = RwSignal::new(false);
    let busy = RwSignal::new(false);
    let (whose, lot_text, water_text, tub_text) = (
        form.text("whose"),
        form.text("lot"),
        form.text("water"),
        form.text("tub"),
    );
    let yard_about = yard(world);
    let everyone = Memo::new(move |_| {
        work.now.with(|now| {
            now.as_ref()
                .map(|(shelf, today)| wanted(shelf, today, &yard_about))
                .unwrap_or_default()
        })
    });
    // The first that is planned stands chosen until the person chooses.
    let chosen = Memo::new(move |_| {
        let key = whose.get();
        let everyone = everyone.get();
        let of_key = everyone.iter().find(|wanted| wanted.key == key);
        of_key.or(everyone.first()).cloned()
    });
    let hays = Memo::new(move |_| {
        work.now.with(|now| {
            now.as_ref()
                .map(|(shelf, _)| lots(shelf))
                .unwrap_or_default()
        })
    });
    let lot = Memo::new(move |_| {
        let text = lot_text.get();
        if !text.is_empty() {
            return Some(LotId(text));
        }
        let planned = chosen.get().and_then(|wanted| wanted.lot);
        planned
            .or_else(|| hays.with(|hays| Some(hays.first()?.0.clone()).filter(|_| hays.len() == 1)))
    });
    let water = Memo::new(move |_| {
        let text = water_text.get();
        let typed = WATERS
            .iter()
            .find(|(_, key)| *key == text)
            .map(|(water, _)| *water);
        typed
            .or_else(|| Some(chosen.get()?.recipe?.water()))
            .unwrap_or(Water::TapWinter)
    });
    let tubs = Memo::new(move |_| {
        work.now.with(|now| {
            now.as_ref()
                .map(|(shelf, today)| yard_tubs(shelf, today))
                .unwrap_or_default()
        })
    });
    let tub = Memo::new(move |_| {
        let text = tub_text.get();
        if !text.is_empty() {
            return text;
        }
        tubs.with(|tubs| {
            let free = tubs.iter().find(|tub| !tub.in_use);
            free.map_or(NEW.to_owned(), |tub| tub.id.0.clone())
        })
    });
    let air = Memo::new(move |_| {
        work.now.with(|now| {
            now.as_ref()
                .map(|(shelf, today)| weather(shelf, today.day).air())
        })
    });
    let minutes = form.text("minutes");
    let recipe = Memo::new(move |_| {
        // What the plan says holds for its own water.
        let planned = chosen
            .get()
            .and_then(|wanted| wanted.recipe)
            .filter(|recipe| recipe.water() == water.get());
        match planned.filter(|_| minutes.with(|text| text.trim().is_empty())) {
            Some(planned) => Ok(planned),
            None => form_of::recipe(water.get(), &minutes.get()),
        }
    });
    let say = move |field: &'static str| {
        Signal::derive(move || {
            wrong
                .get()
                .into_iter()
                .find(|wrong| wrong.field() == field)
                .map(|wrong| words.tub_wrong(&wrong, &DeviceZone))
        })
    };
    let findings = move || {
        let (Ok(recipe), Some(air)) = (recipe.get(), air.get()) else {
            return Vec::new();
        };
        match form_of::checked(recipe, air) {
            Ok(findings) => findings
                .into_iter()
                .map(|finding| words.recipe_finding(finding).sentence)
                .collect(),
            Err(wrong) => vec![words.tub_wrong(&wrong, &DeviceZone)],
        }
    };
    let yard_of_start = yard(world);
    let save = Callback::new(move |()| {
        let (Some(wanted), Some(air)) = (chosen.get_untracked(), air.get_untracked()) else {
            return;
        };
        let in_tub = match tub.get_untracked() {
            key if key == NEW => InTub::New {
                id: form.id("tub-id"),
                name: words.tub_name(tubs.with_untracked(Vec::len).saturating_add(1)),
            },
            id => InTub::There(TubId(id)),
        };
        let minutes = match recipe.get_untracked() {
            Ok(recipe) => recipe.soak().to_minutes().to_string(),
            Err(_) => form.now("minutes"),
        };
        let start = Start {
            about: wanted.about,
            tub: in_tub,
            lot: lot.get_untracked(),
            hay: form.now("hay"),
            amount: wanted.amount,
            water: water.get_untracked(),
            minutes,
            job: wanted.job,
        };
        let soak = form.id("id");
        match start.act(&yard_of_start, air, &soak) {
            Err(faults) => wrong.set(faults),
            Ok(act) => {
                if busy.get_untracked() {
                    return;
                }
                wrong.set(Vec::new());
                busy.set(true);
                leptos::task::spawn_local(async move {
                    let done = world.act(act, Some(form.key())).await;
                    busy.try_set(false);
                    if done.is_ok() {
                        form.clear();
                        world.go(&Route::Tub(TubId(soak)));
                    } else {
                        failed.try_set(true);
                    }
                });
            }
        }
    });
    let none = Memo::new(move |_| work.now.with(Option::is_some) && hays.with(Vec::is_empty));
    let foot = move || {
        view! {
            <Saving failed=failed />
            <ActionRow back=Back { name: words.back().into(), press: Press::from(Route::Shed.to_string()) }>
                {move || {
                    if none.get() {
                        let new = Route::NewHay.to_string();
                        view! { <Action says=words.add_hay() press=new /> }.into_any()
                    } else {
                        view! { <Action says=words.start_the_soak() press=save busy=busy /> }.into_any()
                    }
                }}
            </ActionRow>
        }
    };
    let whose_keys = move || {
        let offers = everyone
            .get()
            .into_iter()
            .map(|wanted| {
                let word = if wanted.name.is_empty() {
                    words.for_the_yard().to_owned()
                } else {
                    wanted.name.clone()
                };
                Offer::new(wanted.key.clone(), word).with(planned(&wanted))
            })
            .collect::<Vec<_>>();
        view! {
            <Choice
                legend=words.soak_for()
                offers=offers
                chosen=Signal::derive(move || chosen.get().map(|wanted| wanted.key))
                on_choose=move |key: String| form.set("whose", key)
            />
        }
    };
    let lot_keys = move || {
        let offers = hays
            .get()
            .into_iter()
            .map(|(id, name)| Offer::new(id, name))
            .collect();
        view! {
            <Choice
                legend=words.soak_lot()
                offers=offers
                chosen=Signal::derive(move || lot.get())
                on_choose=move |id: LotId| form.set("lot", id.0)
                hint=say("lot")
            />
        }
    };
    let tub_keys = move || {
        let tubs = tubs.get();
        let new = Offer::new(NEW.to_owned(), words.tub_name(tubs.len().saturating_add(1)));
        let offers = tubs
            .into_iter()
            .map(|tub| {
                let second = if tub.in_use { words.tub_in_use() } else { "" };
                Offer::new(tub.id.0, tub.name).with(second)
            })
            .chain([new])
            .collect();
        view! {
            <Choice
                legend=words.soak_tub()
                offers=offers
                chosen=Signal::derive(move || Some(tub.get()))
                on_choose=move |key: String| form.set("tub", key)
            />
        }
    };
    let liquor = words.liquor(Liquor::NotIntoWater);
    view! {
        <Frame kind=FrameKind::Flow what=words.shed() foot=foot>
            <Sentence said=Signal::derive(move || {
                if none.get() { words.no_lot_yet() } else { words.soak_what() }.to_owned()
            }) />
            <Unread shelf=work.shelf />
            {draft_line(form)}
            <Show when=move || !none.get()>
                {whose_keys}
                {lot_keys}
                <Field
                    label=words.soak_hay()
                    hint=Signal::derive(move || {
                        let amount = chosen.get().and_then(|wanted| wanted.amount);
                        Some(match amount {
                            Some(amount) => words.soak_hay_planned(&words.feed(amount)),
                            None => words.soak_hay_hint().to_owned(),
                        })
                    })
                    value=form.text("hay")
                    on_input=form.typed("hay")
                    error=say("hay")
                    unit=words.mass_unit(tussock_core::units::parse::MassUnit::Kg).to_owned()
                    keyboard=Keyboard::Decimal
                />
                <Choice
                    legend=words.soak_water_asked()
                    offers=WATERS.iter().map(|(water, _)| Offer::new(*water, words.water_chip(*water))).collect()
                    chosen=Signal::derive(move || Some(water.get()))
                    on_choose=move |water: Water| {
                        if let Some((_, key)) = WATERS.iter().find(|(offered, _)| *offered == water) {
                            form.set("water", (*key).to_owned());
                        }
                    }
                />
                <Field
                    label=words.soak_minutes()
                    hint=Signal::derive(move || {
                        let minutes = recipe.get().map_or(water.get().at_least(), |recipe| recipe.soak());
                        Some(words.soak_minutes_hint(minutes.to_minutes()))
                    })
                    value=minutes
                    on_input=form.typed("minutes")
                    error=say("minutes")
                    keyboard=Keyboard::Numeric
                />
                {tub_keys}
                {move || findings().into_iter().map(|said| view! { <Caution said=said /> }).collect_view()}
            </Show>
            <Caution said=liquor.sentence why=words.why_asked()>{liquor.why}</Caution>
        </Frame>
    }
}

/// What is planned for somebody, as a second line.
fn planned(wanted: &Wanted) -> String {
    let words = English::default();
    let amount = wanted.amount.map(|amount| words.feed(amount));
    let time = wanted.visit.map(|time| words.time(time));
    [time, amount]
        .into_iter()
        .flatten()
        .collect::<Vec<_>>()
        .join(", ")
}
