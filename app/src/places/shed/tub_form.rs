//! A tub of the yard: what it is called and how much hay it holds.

use super::work::yard;
use crate::form::Form;
use crate::parts::{Action, ActionRow, Back, Field, Frame, FrameKind, Keyboard, Press, Sentence};
use crate::places::{Saving, Unread, draft_line};
use crate::world::World;
use leptos::prelude::*;
use tussock_core::animal::TubId;
use tussock_core::log::Body;
use tussock_core::log::bodies::TubV1;
use tussock_core::units::parse::{MassUnit, as_fed};
use tussock_flow::forms::soaks::{TubForm as Typed, TubWrong};
use tussock_flow::routes::Route;
use tussock_flow::rows::Range;
use tussock_flow::words::{English, HorsesWords, ShedWords, SoaksWords, UnitWords};

/// A new tub.
#[component]
pub fn AddTub() -> impl IntoView {
    form(None)
}

/// A tub that is there.
#[component]
pub fn TubForm(
    /// Which.
    tub: TubId,
) -> impl IntoView {
    form(Some(tub))
}

fn form(tub: Option<TubId>) -> AnyView {
    let world = World::here();
    let words = English::default();
    let there = tub.is_some();
    let route = tub.clone().map_or(Route::AddTub, Route::TubForm);
    let form = Form::open(world, route.to_string());
    let id = StoredValue::new(tub);
    let shelf = world.shelf(move || {
        id.get_value()
            .map(|tub| Range::One(tub.0))
            .into_iter()
            .collect()
    });
    let held = Memo::new(move |_| -> Option<Option<TubV1>> {
        let Some(Ok(shelf)) = shelf.get() else {
            return None;
        };
        let record = id.with_value(|tub| shelf.get(&tub.as_ref()?.0).cloned());
        Some(record.and_then(|record| match Body::read(&record) {
            Ok(Body::Tub(body)) => Some(body),
            _ => None,
        }))
    });
    // A field nobody touched shows what is written down.
    let name = Signal::derive(move || {
        form.held("name").unwrap_or_else(|| {
            let body = held.get().flatten();
            body.map(|body| body.name.as_str().to_owned())
                .unwrap_or_default()
        })
    });
    let capacity = Signal::derive(move || {
        form.held("capacity").unwrap_or_else(|| {
            let capacity = held.get().flatten().and_then(|body| body.capacity);
            capacity
                .map(|capacity| match capacity.typed {
                    Some(typed) => typed,
                    None => words.feed_number(capacity.g.as_fed()),
                })
                .unwrap_or_default()
        })
    });
    let wrong = RwSignal::new(None::<TubWrong>);
    let failed = RwSignal::new(false);
    let busy = RwSignal::new(false);
    let save = Callback::new(move |()| {
        let Some(held) = held.get_untracked() else {
            return;
        };
        let typed = Typed {
            name: name.get_untracked(),
            capacity: capacity.get_untracked(),
        };
        let id = id.get_value().map_or_else(|| form.id("id"), |tub| tub.0);
        match typed.act(&yard(world), &id, held.as_ref()) {
            Err(fault) => wrong.set(Some(fault)),
            Ok(act) => {
                wrong.set(None);
                failed.set(false);
                busy.set(true);
                leptos::task::spawn_local(async move {
                    let done = form.save(act).await;
                    busy.try_set(false);
                    if done.is_ok() {
                        world.go(&Route::Soaks);
                    } else {
                        failed.try_set(true);
                    }
                });
            }
        }
    });
    let error = move |at_name: bool| {
        Signal::derive(move || {
            let fault = wrong.get().filter(|fault| fault.at_name() == at_name)?;
            Some(words.tub_form_wrong(&fault))
        })
    };
    let water = move || {
        let capacity = as_fed(&capacity.get(), MassUnit::Kg).ok()?;
        Some(view! { <p>{words.tub_water(capacity)}</p> })
    };
    let foot = move || {
        view! {
            <Saving failed=failed />
            <ActionRow back=Back { name: words.back().into(), press: Press::from(Route::Soaks.to_string()) }>
                <Action
                    says=words.save_tub()
                    press=save
                    busy=Signal::derive(move || busy.get() || held.with(Option::is_none))
                />
            </ActionRow>
        }
    };
    view! {
        <Frame kind=FrameKind::Flow what=words.shed() foot=foot>
            <Sentence said=words.tub_form(there) />
            <Unread shelf />
            {draft_line(form)}
            <Field
                label=words.tub_called()
                value=name
                on_input=form.typed("name")
                error=error(true)
            />
            <Field
                label=words.tub_capacity()
                hint=words.tub_capacity_hint()
                value=capacity
                on_input=form.typed("capacity")
                error=error(false)
                unit=words.mass_unit(MassUnit::Kg).to_owned()
                keyboard=Keyboard::Decimal
            />
            {water}
        </Frame>
    }
    .into_any()
}
