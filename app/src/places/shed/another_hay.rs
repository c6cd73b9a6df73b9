//! Another hay, opened from a net with one tap; and what is said while one stands in for another.

use super::work::Work;
use crate::parts::{Caution, Quiet, QuietRow, Row, Rows};
use crate::world::World;
use leptos::prelude::*;
use tussock_core::animal::LotId;
use tussock_core::limits::published::{STRAW_CHANGEOVER_BETTER, STRAW_CHANGEOVER_LEAST};
use tussock_flow::forms::open_lot::{Refused, open};
use tussock_flow::views::changeover::{Changeover, changeovers, others, planned};
use tussock_flow::words::{English, LotsWords, TubWords};

/// A lot that stands in for the one that a plan names, with its sugar where that must be said.
pub(crate) fn in_place(changeover: &Changeover) -> AnyView {
    let words = English::default();
    let said = words.in_place_of(changeover);
    let why = said.why.unwrap_or_default();
    let sugar = words
        .sugar_in_place(changeover)
        .map(|said| view! { <Caution said=said /> });
    view! {
        <Caution said=said.sentence why=words.why_asked()><p>{why}</p></Caution>
        {sugar}
    }
    .into_any()
}

/// The quiet link under a net, the other lots with one tap each, and what stands in for what. `id` is that of
/// the animal or group whose net it is, `lot` the one that is weighed out now.
pub(super) fn another_hay(
    work: Work,
    id: Signal<String>,
    lot: Signal<Option<LotId>>,
    failed: RwSignal<bool>,
) -> AnyView {
    let words = English::default();
    let world = World::here();
    let shown = RwSignal::new(false);
    let refused = RwSignal::new(None::<Refused>);
    let standing = Memo::new(move |_| {
        work.now
            .with(|now| {
                let (shelf, today) = now.as_ref()?;
                Some(id.with(|id| changeovers(shelf, today, id)))
            })
            .unwrap_or_default()
    });
    let offered = Memo::new(move |_| {
        let lot = lot.get()?;
        work.now.with(|now| {
            let (shelf, today) = now.as_ref()?;
            Some(id.with(|id| others(shelf, today, id, &lot)))
        })
    });
    let open_it = Callback::new(move |new: LotId| {
        let act = work.now.with_untracked(|now| {
            let (shelf, today) = now.as_ref()?;
            let here = lot.get_untracked()?;
            let named = id.with_untracked(|id| planned(today, id, &here).clone());
            Some(open(shelf, &named, &here, &new, today.day))
        });
        match act {
            Some(Ok(act)) => {
                refused.set(None);
                shown.set(false);
                leptos::task::spawn_local(async move {
                    failed.try_set(world.act(act, None).await.is_err());
                });
            }
            Some(Err(why)) => refused.set(Some(why)),
            None => {}
        }
    });
    let list = move || {
        let others = offered.get().unwrap_or_default();
        if others.is_empty() {
            return view! { <p class="soft">{words.no_other_hay()}</p> }.into_any();
        }
        let rows = others
            .into_iter()
            .map(|other| {
                let second = words.other_line(&other);
                if other.may.is_ok() {
                    let new = other.id.clone();
                    let press = Callback::new(move |()| open_it.run(new.clone()));
                    view! { <Row name=words.open_hay(&other.name) second=second press=press /> }
                        .into_any()
                } else {
                    view! { <Row name=other.name second=second /> }.into_any()
                }
            })
            .collect_view();
        let days = [*STRAW_CHANGEOVER_LEAST, *STRAW_CHANGEOVER_BETTER];
        view! {
            <p class="soft">{words.change_over_slowly(days)}</p>
            <Rows name=words.other_hays()>{rows}</Rows>
        }
        .into_any()
    };
    let turn = Callback::new(move |()| shown.update(|shown| *shown = !*shown));
    let says = Signal::derive(move || {
        let says = if shown.get() {
            words.leave_this_hay()
        } else {
            words.open_another_hay()
        };
        says.to_owned()
    });
    view! {
        {move || standing.get().iter().map(in_place).collect_view()}
        <QuietRow><Quiet says press=turn /></QuietRow>
        <Show when=move || shown.get()>{list}</Show>
        <div role="alert">
            {move || refused.get().map(|why| view! { <p class="error">{words.not_opened(&why)}</p> })}
        </div>
    }
    .into_any()
}
