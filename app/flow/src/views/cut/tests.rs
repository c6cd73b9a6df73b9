//! The drawings stay in their frame, over their bones, and differ step by step.

use super::*;

/// Every site of both scales, with its half steps.
fn drawn() -> Vec<(ConditionScale, Site, Vec<f64>)> {
    [ConditionScale::NineStep, ConditionScale::FiveStep]
        .into_iter()
        .flat_map(|scale| scale.sites().iter().map(move |site| (scale, *site)))
        .map(|(scale, site)| {
            let bounds = scale.bounds();
            let halves = (0..=18)
                .map(|half| f64::from(half) / 2.0)
                .filter(|step| bounds.min <= *step && *step <= bounds.max);
            (scale, site, halves.collect())
        })
        .collect()
}

/// The height of the surface over a place.
fn height_at(points: &[Point], x: f64) -> Option<f64> {
    points.windows(2).find_map(|pair| {
        let (a, b) = (pair[0], pair[1]);
        (a.0 <= x && x <= b.0 && a.0 < b.0).then(|| a.1 + (b.1 - a.1) * (x - a.0) / (b.0 - a.0))
    })
}

#[test]
fn every_site_of_both_walks_has_a_drawing_within_its_frame() {
    for (scale, site, halves) in drawn() {
        for step in halves {
            let points = cut(scale, site, Some(step)).unwrap().surface.unwrap();
            for (x, y) in points {
                assert!((0.0..=WIDTH).contains(&x), "{site:?} {step} x {x}");
                assert!((0.0..=HEIGHT).contains(&y), "{site:?} {step} y {y}");
            }
        }
    }
    assert_eq!(cut(ConditionScale::NineStep, Site::Pelvis, Some(5.0)), None);
    assert_eq!(cut(ConditionScale::FiveStep, Site::Loin, Some(5.0)), None);
}

#[test]
fn no_bone_shows_through_the_skin() {
    for (scale, site, halves) in drawn() {
        for step in halves {
            let cut = cut(scale, site, Some(step)).unwrap();
            let skin = cut.surface.unwrap();
            for bone in cut.bones {
                let points = match bone {
                    Bone::Round { at, radius } => vec![(at.0, at.1 - radius)],
                    Bone::Edge(points) => points,
                };
                for (x, y) in points {
                    let over = height_at(&skin, x).unwrap();
                    assert!(
                        over < y,
                        "{site:?} {step}: skin {over} under bone {y} at {x}"
                    );
                }
            }
        }
    }
}

#[test]
fn every_half_step_looks_different_and_fills_out() {
    let area = |scale, site, step| -> f64 {
        let points = cut(scale, site, Some(step)).unwrap().surface.unwrap();
        points
            .windows(2)
            .map(|pair| (pair[1].0 - pair[0].0) * (HEIGHT - f64::midpoint(pair[0].1, pair[1].1)))
            .sum()
    };
    for (scale, site, halves) in drawn() {
        let areas: Vec<f64> = halves.iter().map(|step| area(scale, site, *step)).collect();
        assert!(
            areas.windows(2).all(|pair| pair[0] < pair[1]),
            "{scale:?} {site:?} {areas:?}"
        );
    }
}

#[test]
fn nothing_is_drawn_of_a_step_nobody_chose() {
    let ribs = cut(ConditionScale::NineStep, Site::Ribs, None);
    assert_eq!(ribs.unwrap().surface, None);
    assert_eq!(crest(None).surface, None);
}

#[test]
fn only_the_last_crest_leans() {
    let middle = |score| {
        let points = crest(Some(score)).surface.unwrap();
        points[points.len() / 2].0
    };
    assert!((0..5).all(|score| (middle(score) - MIDDLE).abs() < 1e-9));
    assert!(middle(5) > MIDDLE + 20.0);
    for score in 0..=5 {
        for (x, y) in crest(Some(score)).surface.unwrap() {
            assert!((0.0..=WIDTH).contains(&x) && (0.0..=HEIGHT).contains(&y));
        }
    }
}

#[test]
fn a_path_goes_through_its_points() {
    assert_eq!(path(&[]), "");
    assert_eq!(path(&[(1.0, 2.0)]), "M1.0 2.0");
    let d = path(&[(0.0, 0.0), (6.0, 6.0), (12.0, 0.0)]);
    assert!(d.starts_with("M0.0 0.0C1.0 1.0 ") && d.ends_with("12.0 0.0"));
}
