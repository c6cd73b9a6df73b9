//! Which of a group will not eat.

use crate::device::clock::DeviceZone;
use crate::parts::{
    Action, ActionRow, Back, Cord, Frame, FrameKind, Hang, Press, Sentence, State, Tag,
};
use crate::places::Unread;
use crate::world::World;
use leptos::prelude::*;
use tussock_core::animal::{AnimalId, GroupId};
use tussock_flow::routes::Route;
use tussock_flow::views::group::{who, who_needs};
use tussock_flow::words::{English, GroupWords, HorsesWords, LedgerWords, NotEatingWords};

/// Which of a group will not eat: a tag an animal, each leading to its own flow.
#[component]
pub fn WhoWillNotEat(
    /// The group.
    group: GroupId,
) -> impl IntoView {
    let world = World::here();
    let words = English::default();
    let shelf = world.shelf(who_needs);
    let minute = world.minute();
    let id = StoredValue::new(group.clone());
    let seen = Memo::new(move |_| match (shelf.get(), minute.get()) {
        (Some(Ok(shelf)), now) => who(&shelf, &id.get_value(), now, &DeviceZone),
        _ => None,
    });
    let said = Signal::derive(move || {
        if seen.with(Option::is_some) {
            words.which_will_not_eat().to_owned()
        } else if shelf.get().is_none() {
            words.opening().to_owned()
        } else {
            words.no_such_group().to_owned()
        }
    });
    let tags = move || {
        seen.get().map(|(_, members)| {
            members
                .into_iter()
                .map(|animal| {
                    let press = Route::NotEating(animal.id).to_string();
                    view! {
                        <Hang>
                            <Tag
                                state=Signal::stored(State::Later)
                                word=words.offer_it()
                                what=Signal::stored(animal.name)
                                press=press
                            />
                        </Hang>
                    }
                })
                .collect_view()
        })
    };
    let hung = Route::Hanging(AnimalId(group.0.clone())).to_string();
    let ledger = Route::GroupLedger(group).to_string();
    let foot = move || {
        let (hung, ledger) = (hung.clone(), ledger.clone());
        view! {
            <ActionRow back=Back { name: words.back().into(), press: Press::from(hung) }>
                <Action says=words.what_was_eaten() press=ledger />
            </ActionRow>
        }
    };
    view! {
        <Frame
            kind=FrameKind::Flow
            what=Signal::derive(move || seen.get().map(|(group, _)| group.name).unwrap_or_default())
            when=words.will_not_eat()
            foot=foot
        >
            <Sentence said />
            <Unread shelf />
            <p>{words.watch_them_at_the_hay()}</p>
            <Cord name=words.which_will_not_eat()>{tags}</Cord>
        </Frame>
    }
}
