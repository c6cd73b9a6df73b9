//! What is written of a net that hangs, and how fast the animal eats.

use super::hanging::AtNets;
use super::work::yard;
use crate::device::clock::{self, DeviceZone};
use crate::device::ids;
use leptos::prelude::*;
use tussock_core::log::bodies::Quarters;
use tussock_flow::acts::Act;
use tussock_flow::forms::hanging::{self as form_of, Wrong};
use tussock_flow::forms::round::Ticking;
use tussock_flow::views::hanging::{Hanging as View, HungNet};
use tussock_flow::words::{English, GroupWords, HangingWords, TubWords};

impl AtNets {
    /// How fast it eats, and the nets it was timed with.
    pub(super) fn eats(self) -> Option<AnyView> {
        let words = English::default();
        let today = self.today();
        let net = self.net.get();
        self.view.with(|view| {
            let view = view.as_ref()?;
            if view.group().is_some() {
                let [said, why] = words.no_rate_of_a_group();
                return Some(view! { <h2>{said}</h2> <p>{why}</p> }.into_any());
            }
            let eats = view.eats.as_ref()?;
            let lasts = net.and_then(|net| words.lasts(eats, &net));
            let rates = [false, true]
                .into_iter()
                .filter_map(|soaked| words.eats(eats, soaked))
                .chain(lasts)
                .map(|line| view! { <p>{line}</p> })
                .collect_view();
            let timed = eats
                .timed
                .iter()
                .map(|timed| view! { <li>{words.timed_line(timed, today, &DeviceZone)}</li> })
                .collect_view();
            let timed = (!eats.timed.is_empty()).then(|| view! { <ul class="soft">{timed}</ul> });
            Some(
                view! {
                    <h2>{words.eats_head(&view.name)}</h2>
                    {rates}
                    {timed}
                }
                .into_any(),
            )
        })
    }

    pub(super) fn say(self, quarters: Quarters) {
        let made =
            self.with_net(|view, net| Ok(form_of::by_eye(&view.about, net, quarters, &ids::new())));
        self.hardly.set(form_of::hardly_touched(quarters));
        self.take(made);
    }

    pub(super) fn empty(self, found: bool) {
        let made = self.with_net(|view, net| {
            form_of::eaten_up(&view.about, net, clock::now(), found, ids::new)
        });
        self.hardly.set(false);
        self.take(made);
    }

    pub(super) fn save(self) {
        let (rest, wet) = (self.form.now("rest"), self.form.now("wet"));
        let id = self.form.id("id");
        let made = self.with_net(|view, net| form_of::weighed(&view.about, net, &rest, &wet, &id));
        self.hardly.set(false);
        self.take(made);
    }

    fn with_net(
        self,
        make: impl FnOnce(&View, &HungNet) -> Result<Act, Wrong>,
    ) -> Option<Result<Act, Wrong>> {
        let net = self.net.get_untracked()?;
        self.view
            .with_untracked(|view| Some(make(view.as_ref()?, &net)))
    }

    fn take(self, made: Option<Result<Act, Wrong>>) {
        match made {
            Some(Ok(act)) => self.write(act),
            Some(Err(wrong)) => self.wrong.set(Some(wrong)),
            None => {}
        }
    }

    /// Hangs the net that is due, as its tick on the round does.
    pub(super) fn hang(self) {
        let words = English::default();
        let yard = yard(self.world);
        let job = self.view.with_untracked(|view| view.as_ref()?.due.clone());
        let made = self.work.now.with_untracked(|now| {
            let (shelf, today) = now.as_ref()?;
            let ticking = Ticking {
                shelf,
                today,
                yard: &yard,
                tub_name: &|nth| words.tub_name(nth),
            };
            Some(ticking.tick(job.as_ref()?, &mut ids::new))
        });
        match made {
            Some(Ok(act)) => self.write(act),
            Some(Err(_)) => self.refused.set(true),
            None => {}
        }
    }

    fn write(self, act: Act) {
        if self.busy.get_untracked() {
            return;
        }
        self.busy.set(true);
        self.wrong.set(None);
        self.refused.set(false);
        self.failed.set(false);
        leptos::task::spawn_local(async move {
            let done = self.form.save(act).await;
            self.busy.try_set(false);
            if done.is_ok() {
                self.form.empty();
                self.weighing.try_set(false);
            } else {
                self.failed.try_set(true);
            }
        });
    }
}
