//! What the hand feels at each step of a condition score.
//!
//! The steps are those of Henneke et al. 1983 (1 to 9), Carroll & Huntington 1988 (0 to 5) and Carter et al. 2009 (the
//! crest); the words are our own, for a hand and not for a picture.

use tussock_core::assess::{ConditionScale, Site};

/// The words of a step; `None` where the scale or the site has no such step.
pub(super) fn step(site: Site, scale: ConditionScale, step: u8) -> Option<&'static str> {
    match scale {
        ConditionScale::NineStep => {
            let steps = match site {
                Site::Neck => &NECK,
                Site::Withers => &WITHERS,
                Site::BehindShoulder => &SHOULDER,
                Site::Ribs => &RIBS,
                Site::Loin => &LOIN,
                Site::TailHead => &TAIL_HEAD,
                Site::BackAndRibs | Site::Pelvis => return None,
            };
            steps.get(usize::from(step).checked_sub(1)?).copied()
        }
        ConditionScale::FiveStep => {
            let steps = match site {
                Site::Neck => &FIVE_NECK,
                Site::BackAndRibs => &FIVE_BACK,
                Site::Pelvis => &FIVE_PELVIS,
                Site::Withers | Site::BehindShoulder | Site::Ribs | Site::Loin | Site::TailHead => {
                    return None;
                }
            };
            steps.get(usize::from(step)).copied()
        }
    }
}

/// The words of a crest score from 0 to 5.
pub(super) fn crest(score: u8) -> &'static str {
    CREST
        .get(usize::from(score))
        .copied()
        .unwrap_or("not a score of this scale")
}

const NECK: [&str; 9] = [
    "Every bone stands out, nothing between skin and bone",
    "Neck bones felt sharp under a thin skin",
    "Thin neck, bones easily felt, hollow in front of the shoulder",
    "Slim, not plainly thin; bones felt with light pressure",
    "Smooth, firm muscle, runs into the shoulder",
    "A little soft filling begins under the mane",
    "A band of fat along the top line can be gripped",
    "Thick all over, hard to tell muscle from fat",
    "Bulging pads that quiver when the hand moves them",
];
const WITHERS: [&str; 9] = [
    "A sharp blade of bone, hollow on both sides",
    "Bone stands out, skin lies tight over it",
    "Bone clearly outlined, thin cover at the sides",
    "Bone easily felt, sides almost level",
    "Rounded over the bone, firm at the sides",
    "A little softness along both sides",
    "Fat along both sides, the bone is still found",
    "Broad and soft, the bone is found only with pressure",
    "Buried: one soft mound from side to side",
];
const SHOULDER: [&str; 9] = [
    "Shoulder blade stands out, deep hollow behind it",
    "Edge of the blade sharp, hollow behind it",
    "Blade outlined, slight hollow behind it",
    "Blade easily felt, almost level behind it",
    "Runs smoothly into the ribs, firm to the hand",
    "A little soft filling behind the elbow line",
    "Soft fat behind the shoulder, gives under the fingers",
    "Filled level with the shoulder, soft to a deep press",
    "A bulging pad behind the shoulder, folds when it turns",
];
const RIBS: [&str; 9] = [
    "Every rib stands out, deep grooves between",
    "Ribs stand out, skin thin over them",
    "Ribs easily seen, the thinnest cover under the hand",
    "Ribs faintly seen, each one counted by touch",
    "Not seen, felt at once under a flat hand",
    "Felt through a thin spongy cover",
    "Felt only with pressure, soft fat between them",
    "Hard to find even with firm pressure",
    "Not felt at all, a smooth soft side",
];
const LOIN: [&str; 9] = [
    "Spine a row of sharp points, sunken on both sides",
    "Points of the spine stand out under thin skin",
    "Spine a ridge, the loin slopes away from it",
    "A slight ridge along the back",
    "Level: no ridge and no crease",
    "A slight crease begins along the spine",
    "A crease along the back, soft on both sides",
    "A clear crease that would hold water",
    "A deep gutter between two soft pads",
];
const TAIL_HEAD: [&str; 9] = [
    "Tail bones stand clear, deep hollow on both sides",
    "Tail head stands up, skin tight around it",
    "Tail head plain to see, single bones just covered",
    "Bone easily felt, the first fat around it",
    "A little spongy around the bone",
    "Soft fat around the bone, still easily found",
    "Soft and rounded, the bone takes pressure to find",
    "Very soft, the bone is hard to find",
    "Bulging pads on both sides, the bone is buried",
];
const FIVE_NECK: [&str; 6] = [
    "Hollow underside, narrow at the base, all bone",
    "Narrow and slack at the base",
    "Narrow but firm",
    "Firm, no crest",
    "A slight crest, soft under the mane",
    "A marked crest, wide and folded",
];
const FIVE_BACK: [&str; 6] = [
    "Skin tight over the ribs, spine sharp",
    "Ribs easily seen, spine stands out",
    "Ribs just seen, spine covered and felt",
    "Ribs covered and easily felt",
    "Ribs hard to feel, a gutter along the back",
    "Ribs not felt, a deep gutter along the back",
];
const FIVE_PELVIS: [&str; 6] = [
    "Sunken rump, sharp hips, deep hollow under the tail",
    "Rump sunken but skin gives, hollow under the tail",
    "Rump flat beside the spine, hips plain to see",
    "Rump rounded, hips covered and felt",
    "Hips felt only with pressure, rump soft",
    "Hips not felt, rump in two soft mounds",
];
const CREST: [&str; 6] = [
    "No crest seen and none felt",
    "Nothing to see; a slight filling is felt under the mane",
    "Seen, even from poll to withers; soft, bends to the side",
    "Thick, heaviest in the middle; fills a cupped hand, stiffer",
    "Too thick to cup, hardly bends, may have creases across it",
    "So heavy that it hangs to one side for good",
];
