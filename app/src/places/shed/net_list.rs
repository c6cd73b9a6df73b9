//! The nets of the yard.

use crate::device::clock::DeviceZone;
use crate::parts::{Action, ActionRow, Back, Frame, FrameKind, Press, Row, Rows, Sentence};
use crate::places::Unread;
use crate::world::World;
use leptos::prelude::*;
use tussock_flow::routes::Route;
use tussock_flow::views::net_list::{NetRow, rows};
use tussock_flow::words::{English, HorsesWords, NetWords, ShedWords, UnitWords};

use super::work::Work;

/// The nets, each with where it is.
#[component]
pub fn YardNets() -> impl IntoView {
    let world = World::here();
    let words = English::default();
    let work = Work::of(world);
    let nets = Memo::new(move |_| {
        work.now
            .with(|now| now.as_ref().map(|(shelf, _)| rows(shelf)))
    });
    let said = Signal::derive(move || match nets.get() {
        None => words.opening().to_owned(),
        Some(nets) => words.nets_here(nets.len()),
    });
    let row = move |net: NetRow| {
        view! {
            <Row
                name=net.name.clone()
                value=net.capacity.map(|most| words.feed(most))
                second=words.net_line(&net, &DeviceZone)
                press=Route::Net(net.id).to_string()
            />
        }
    };
    let list = move || {
        let nets = nets.get().filter(|nets| !nets.is_empty())?;
        let rows = nets.into_iter().map(row).collect_view();
        Some(view! { <Rows name=words.the_nets()>{rows}</Rows> })
    };
    let foot = move || {
        view! {
            <ActionRow back=Back { name: words.back().into(), press: Press::from(Route::Shed.to_string()) }>
                <Action says=words.add_net() press=Route::NewNet.to_string() />
            </ActionRow>
        }
    };
    view! {
        <Frame kind=FrameKind::Flow what=words.shed() foot=foot>
            <Sentence said />
            <Unread shelf=work.shelf />
            {list}
        </Frame>
    }
}
