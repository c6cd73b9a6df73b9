//! Nets on the scale.

use super::*;

#[test]
fn four_nets_are_weighed_and_the_next_one_comes_up_by_itself() {
    let mut yard = bramble();
    let now = at(5, "05:40:00");
    let day = yard.nets(now);
    let (nth, net) = day.next().unwrap();
    assert_eq!((nth, day.to_weigh()), (1, 4));
    assert_eq!(kg(net.target()), 4.35);
    assert_eq!(net.own.from, OwnFrom::Default);
    let words = English::default();
    assert_eq!(
        words.hay_and_net(net.hay, &net.own),
        "3.60 hay + 0.75 net, a default"
    );
    let over = net.judge(AsFed::kg(4.52));
    assert_eq!(words.on_scale(over), "0.17 kg over. Take out a handful");
    assert_eq!(net.place(AsFed::kg(9.0)), 1.0);
    yard.weigh(now, "4,35");
    let day = yard.nets(now);
    assert_eq!(day.next().unwrap().0, 2);
    assert_eq!(
        words.weighed_of(day.weighed(), 4, day.hay(), words.for_today()),
        "1 of 4 weighed, 3.6 of 14.4 kg hay today"
    );
    assert_eq!(shed(&yard.shelf, &yard.today(now)).to_weigh(), 3);
    // Half or double is asked back in words and saved all the same.
    assert!(matches!(
        day.next().unwrap().1.judge(AsFed::kg(2.2)),
        OnScale::Half { .. }
    ));
    yard.weigh(now, "2.2");
    let day = yard.nets(now);
    assert!(matches!(day.nets[1].state, NetState::Weighed(hay) if kg(hay) == 1.45));
    // The rest is filled to target in one tap.
    let act = all_to_target(&day, || yard.id()).unwrap();
    yard.act(now, &act);
    assert!(yard.nets(now).next().is_none());
}

#[test]
fn a_reading_without_hay_or_without_sense_is_asked_back() {
    let yard = bramble();
    let day = yard.nets(at(5, "05:40:00"));
    let net = day.next().unwrap().1;
    assert_eq!(weighed(&day.about, net, "0.7", "a"), Err(Wrong::NoHay));
    for typed in ["", ".", "4.3.5", "a net"] {
        assert!(matches!(
            weighed(&day.about, net, typed, "a"),
            Err(Wrong::Parse(_))
        ));
    }
}

#[test]
fn an_empty_net_is_weighed_once_and_the_target_follows() {
    let mut yard_of = bramble();
    let now = at(5, "05:40:00");
    let about = Subject::animal(&AnimalId("bramble".into()));
    let act = own_weight(&about, None, "Bramble, net 1", "0.9", "net-1").unwrap();
    yard_of.act(now, &act);
    let day = yard_of.nets(now);
    assert_eq!(day.nets[0].own.from, OwnFrom::This);
    assert_eq!(day.nets[1].own.from, OwnFrom::Another);
    assert_eq!(kg(day.nets[1].target()), 4.5);
    let there = crate::views::nets::yard_nets(&yard_of.shelf);
    let act = own_weight(&about, there.first(), "Bramble, net 1", "0.8", "unused").unwrap();
    yard_of.act(now, &act);
    assert_eq!(crate::views::nets::yard_nets(&yard_of.shelf).len(), 1);
    assert_eq!(kg(yard_of.nets(now).nets[0].target()), 4.4);
}

#[test]
fn an_own_weight_stays_with_the_net_it_was_weighed_for() {
    let mut yard_of = bramble();
    let now = at(5, "05:40:00");
    let from = |yard_of: &Yard| -> Vec<OwnFrom> {
        yard_of
            .nets(now)
            .nets
            .iter()
            .map(|net| net.own.from)
            .collect()
    };
    // Of another animal, and of the yard: they stand in and are never taken for this one's.
    let moss = Subject::animal(&AnimalId("moss".into()));
    for (about, name, id) in [(&moss, "Moss, net 1", "m1"), (&yard(), "Net 2", "y2")] {
        let act = own_weight(about, None, name, "1.1", id).unwrap();
        yard_of.act(now, &act);
    }
    assert_eq!(from(&yard_of), [OwnFrom::Another; 4]);
    let about = Subject::animal(&AnimalId("bramble".into()));
    let act = own_weight(&about, None, "Bramble, net 3", "0.9", "b3").unwrap();
    yard_of.act(now, &act);
    let [other, this] = [OwnFrom::Another, OwnFrom::This];
    assert_eq!(from(&yard_of), [other, other, this, other]);
    assert_eq!(kg(yard_of.nets(now).nets[2].own.weight), 0.9);
}

#[test]
fn a_net_that_is_hung_takes_its_filling_out_of_stock() {
    let mut yard_of = bramble();
    // Six nets filled the evening before: four for tomorrow, two are left over.
    let evening = at(4, "21:00:00");
    let plan = "2026-05-05".parse().unwrap();
    for _ in 0..4 {
        let today = yard_of.today(evening);
        let day = nets_day(&yard_of.shelf, &today, "bramble", plan).unwrap();
        let id = yard_of.id();
        let act = weighed(&day.about, day.next().unwrap().1, "4.35", &id).unwrap();
        yard_of.act(evening, &act);
    }
    let now = at(5, "18:00:00");
    assert!(yard_of.nets(now).next().is_none());
    yard_of.tick(now, JobKind::HangNet);
    let left = stock(
        &yard_of.shelf,
        &Subject::animal(&AnimalId("bramble".into())),
    );
    assert_eq!((left.hung.len(), left.left.len()), (1, 3));
}

#[test]
fn nets_that_are_past_and_were_not_weighed_are_not_called_filled() {
    let mut yard_of = bramble();
    let now = at(5, "05:40:00");
    let mut day = yard_of.nets(now);
    for net in &mut day.nets {
        net.state = NetState::Past;
    }
    assert!(day.next().is_none() && !day.all_weighed());
    let words = English::default();
    assert_eq!(
        words.none_left("Bramble", words.for_today()),
        "Nothing is left to weigh for Bramble today"
    );
    let mut ids = (0..).map(|nth| format!("filled-{nth}"));
    let act = all_to_target(&yard_of.nets(now), || ids.next().unwrap()).unwrap();
    yard_of.act(now, &act);
    assert!(yard_of.nets(now).all_weighed());
}
