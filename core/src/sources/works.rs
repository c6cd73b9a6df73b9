//! The bibliography. Primary publications only; how far each value was checked is its mark, not here.

/// A publication, or one of the three things that stand for none.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Work {
    /// Exact by definition of the units.
    ExactByDefinition,
    /// The trade's common practice, without a source.
    CommonPractice,
    /// Our own judgement.
    Tussock,
    /// Carroll & Huntington 1988.
    CarrollHuntington1988,
    /// Martinson et al. 2014.
    Martinson2014,
    /// Catalano et al. 2016.
    Catalano2016,
    /// Catalano et al. 2019.
    Catalano2019,
    /// Pearson & Ouassat 1996.
    PearsonOuassat1996,
    /// Pearson & Ouassat 2000.
    PearsonOuassat2000,
    /// The Icelandic girth and length equation.
    IcelandicWeight,
    /// Ellis 2003.
    EllisThesis2003,
    /// The tape equations of the extension services for young horses.
    ExtensionTape,
    /// Henneke et al. 1983.
    Henneke1983,
    /// Carter et al. 2009, the crest scale.
    Carter2009Crest,
    /// Carter et al. 2009, prediction of pasture laminitis.
    Carter2009Laminitis,
    /// Fitzgerald et al. 2019.
    Fitzgerald2019,
    /// Coleman et al. 2018.
    Coleman2018,
    /// Heusner 1993.
    Heusner1993,
    /// NRC 2007.
    Nrc2007,
    /// NRC 2005.
    Nrc2005,
    /// NRC 1987.
    Nrc1987,
    /// Fonnesbeck 1981.
    Fonnesbeck1981,
    /// Pagan 1998.
    Pagan1998,
    /// Pagan & Hintz 1986.
    PaganHintz1986,
    /// Anderson et al. 1983.
    Anderson1983,
    /// Eaton et al. 1995.
    Eaton1995,
    /// Bamford et al. 2019.
    Bamford2019,
    /// de Laat et al. 2016.
    DeLaat2016,
    /// Martínez Marín et al. 2022.
    MartinezMarin2022,
    /// NASEM 2021.
    Nasem2021,
    /// Teff hay cuttings of the Pacific North-West, 2015.
    TeffSurvey2015,
    /// Feedipedia.
    Feedipedia,
    /// Equine forage laboratory library of means.
    ForageLaboratory,
    /// Durham et al. 2019, the ECEIM consensus.
    Eceim2019,
    /// Harris et al. 2017.
    Harris2017,
    /// Frank et al. 2010.
    Frank2010,
    /// Longland et al. 2011.
    Longland2011,
    /// Longland et al. 2014.
    Longland2014,
    /// Longland et al. 2016.
    Longland2016,
    /// Longland et al. 2021.
    Longland2021,
    /// Martinson et al. 2012, soaking and carbohydrate.
    Martinson2012,
    /// Martinson et al. 2012, feeders and waste.
    MartinsonFeeders2012,
    /// McGowan et al. 2013.
    McGowan2013,
    /// Argo et al. 2012.
    Argo2012,
    /// Argo et al. 2015.
    Argo2015,
    /// Dugdale et al. 2010.
    Dugdale2010,
    /// Bruynsteen et al. 2015.
    Bruynsteen2015,
    /// Dosi et al. 2020.
    Dosi2020,
    /// Jansson et al. 2021.
    Jansson2021,
    /// Moore-Colyer et al. 2014.
    MooreColyer2014,
    /// Bochnia et al. 2021.
    Bochnia2021,
    /// Glatter et al. 2021.
    Glatter2021,
    /// Carslake et al. 2018.
    Carslake2018,
    /// Macon et al. 2023.
    Macon2023,
    /// Kerley et al. 2025.
    Kerley2025,
    /// Luthersson et al. 2009.
    Luthersson2009,
    /// Husted et al. 2009.
    Husted2009,
    /// Glunk et al. 2014, nets.
    Glunk2014Nets,
    /// Glunk et al. 2014, muzzles.
    Glunk2014Muzzle,
    /// Ellis et al. 2015.
    Ellis2015,
    /// Ince et al. 2011.
    Ince2011,
    /// Shewmaker et al. 2006.
    Shewmaker2006,
    /// Dowler, thesis at North Carolina State University.
    DowlerThesis,
    /// Watts & Sirois 2003.
    WattsSirois2003,
    /// Wylie et al. 2016.
    Wylie2016,
    /// Merck Veterinary Manual.
    MerckManual,
    /// The Donkey Sanctuary's care guidance.
    DonkeySanctuary,
    /// Wooldridge 2017.
    Wooldridge2017,
    /// Labels of vitamin and mineral balancers.
    BalancerLabels,
    /// Hyperlipaemia in equids, JAVMA 234.
    Javma2009,
    /// The extension sheet of OSU on moisture of hay.
    OsuHayMoisture,
    /// Huhnke's extension sheet on heating of hay.
    HuhnkeHayHeating,
    /// The Penn State Agronomy Guide.
    PennStateAgronomyGuide,
    /// Extension pages on the density of pasture.
    ExtensionPastureDensity,
    /// NRCS and Cornell, the grazing stick.
    NrcsGrazingStick,
    /// University of Minnesota Extension on grazing horses.
    UmnGrazing,
    /// Weinert-Nelson et al. 2021.
    WeinertNelson2021,
    /// Jensen et al. 2014.
    Jensen2014,
    /// OSU extension on pasture grasses for horses.
    OsuOrchardgrass,
    /// Siciliano et al. 2017.
    Siciliano2017,
    /// Blaney et al. 1981.
    Blaney1981,
    /// OSU endophyte laboratory.
    OsuEndophyte,
    /// The trial of soaking teff hay high in nitrate.
    TeffNitrateTrial,
    /// Kirton et al. 2024.
    Kirton2024,
    /// McIntosh 2007.
    McIntosh2007,
    /// Mayland et al. 2003.
    Mayland2003,
    /// Menzies-Gow et al. 2010.
    MenziesGow2010,
    /// Pollard et al. 2019.
    Pollard2019,
    /// Hopkins 1920.
    Hopkins1920,
}

/// How a work is cited.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Citation {
    /// Authors, or who issued it.
    pub authors: &'static str,
    /// The year; `None` where there is none.
    pub year: Option<u16>,
    /// Title or subject.
    pub title: &'static str,
    /// Journal and pages, or publisher.
    pub appeared: &'static str,
}

const fn cite(
    authors: &'static str,
    year: u16,
    title: &'static str,
    appeared: &'static str,
) -> Citation {
    Citation {
        authors,
        year: Some(year),
        title,
        appeared,
    }
}

impl Work {
    /// The citation of this work.
    // numeric: the years of publication and the volume numbers inside the titles
    #[allow(clippy::too_many_lines, reason = "one line a publication")]
    pub const fn citation(self) -> Citation {
        match self {
            Self::ExactByDefinition => Citation {
                authors: "International agreement",
                year: None,
                title: "Exact by definition of the unit",
                appeared: "",
            },
            Self::CommonPractice => Citation {
                authors: "The trade",
                year: None,
                title: "Common practice, no source",
                appeared: "",
            },
            Self::Tussock => Citation {
                authors: "Tussock",
                year: None,
                title: "Our judgement, no published source",
                appeared: "",
            },
            Self::CarrollHuntington1988 => cite(
                "Carroll, Huntington",
                1988,
                "Body condition scoring and weight estimation of the horse",
                "Equine Vet J 20:41-45",
            ),
            Self::Martinson2014 => cite(
                "Martinson et al.",
                2014,
                "Estimation of body weight and development of a body weight score for adult equids using morphometric measurements",
                "J Anim Sci 92:2230",
            ),
            Self::Catalano2016 => cite(
                "Catalano et al.",
                2016,
                "Estimation of actual and ideal bodyweight using morphometric measurements of draft and warmblood horses",
                "J Equine Vet Sci 39:38-43",
            ),
            Self::Catalano2019 => cite(
                "Catalano et al.",
                2019,
                "Estimation of bodyweight of miniature, saddle-type and Thoroughbred horses",
                "J Equine Vet Sci",
            ),
            Self::PearsonOuassat1996 => cite(
                "Pearson, Ouassat",
                1996,
                "Estimation of the liveweight and body condition of working donkeys in Morocco",
                "Vet Rec 138:229",
            ),
            Self::PearsonOuassat2000 => cite(
                "Pearson, Ouassat",
                2000,
                "A guide to live weight estimation and body condition scoring of donkeys",
                "University of Edinburgh",
            ),
            Self::IcelandicWeight => Citation {
                authors: "Authors not shown in the abstract",
                year: None,
                title: "Estimation of the body weight of Icelandic horses",
                appeared: "abstract",
            },
            Self::EllisThesis2003 => cite(
                "Ellis",
                2003,
                "Weight estimation of horses and ponies",
                "thesis, Coventry University",
            ),
            Self::ExtensionTape => Citation {
                authors: "University extension services",
                year: None,
                title: "Estimating the weight of foals, weanlings and yearlings with a tape, in inches and pounds",
                appeared: "fact sheets, read second-hand",
            },
            Self::Henneke1983 => cite(
                "Henneke et al.",
                1983,
                "Relationship between condition score, physical measurements and body fat percentage in mares",
                "Equine Vet J 15:371",
            ),
            Self::Carter2009Crest => cite(
                "Carter et al.",
                2009,
                "Apparent adiposity assessed by standardised scoring systems and morphometric measurements in horses and ponies",
                "Vet J 179:204-210",
            ),
            Self::Carter2009Laminitis => cite(
                "Carter et al.",
                2009,
                "Prediction of incipient pasture-associated laminitis from hyperinsulinaemia, hyperleptinaemia and generalised and localised obesity in a cohort of ponies",
                "Equine Vet J 41:171",
            ),
            Self::Fitzgerald2019 => cite(
                "Fitzgerald et al.",
                2019,
                "The cresty neck score is an independent predictor of insulin dysregulation in ponies",
                "PLoS One 14:e0220203",
            ),
            Self::Coleman2018 => cite(
                "Coleman et al.",
                2018,
                "Case-control study of risk factors for pasture- and endocrinopathy-associated laminitis in North American horses",
                "J Am Vet Med Assoc 253:470",
            ),
            Self::Heusner1993 => cite(
                "Heusner",
                1993,
                "Weight gain a unit of condition, cited in NRC 2007",
                "University of Georgia",
            ),
            Self::Nrc2007 => cite(
                "National Research Council",
                2007,
                "Nutrient Requirements of Horses, 6th edition",
                "National Academies Press",
            ),
            Self::Nrc2005 => cite(
                "National Research Council",
                2005,
                "Mineral Tolerance of Animals",
                "National Academies Press",
            ),
            Self::Nrc1987 => cite(
                "National Research Council",
                1987,
                "Vitamin Tolerance of Animals",
                "National Academies Press",
            ),
            Self::Fonnesbeck1981 => cite(
                "Fonnesbeck",
                1981,
                "Estimating digestible energy and TDN for horses with chemical analysis of feeds",
                "J Anim Sci 53",
            ),
            Self::Pagan1998 => cite(
                "Pagan",
                1998,
                "Measuring the digestible energy content of horse feeds",
                "Advances in Equine Nutrition",
            ),
            Self::PaganHintz1986 => {
                cite("Pagan, Hintz", 1986, "Equine energetics", "J Anim Sci 63")
            }
            Self::Anderson1983 => cite(
                "Anderson et al.",
                1983,
                "Digestible energy requirements for exercising horses",
                "J Anim Sci 56:91",
            ),
            Self::Eaton1995 => cite(
                "Eaton et al.",
                1995,
                "Maximum accumulated oxygen deficit in Thoroughbred horses",
                "J Appl Physiol 78:1564",
            ),
            Self::Bamford2019 => cite(
                "Bamford et al.",
                2019,
                "Influence of dietary restriction and low-intensity exercise in obese equids",
                "J Vet Intern Med 33:280",
            ),
            Self::DeLaat2016 => cite(
                "de Laat et al.",
                2016,
                "Sustained, low-intensity exercise achieved by a dynamic feeding system decreases body fat in ponies",
                "J Vet Intern Med 30:1732",
            ),
            Self::MartinezMarin2022 => cite(
                "Martínez Marín et al.",
                2022,
                "Prediction of digestible energy of feeds for horses",
                "Animals 12:1628",
            ),
            Self::Nasem2021 => cite(
                "NASEM",
                2021,
                "Nutrient Requirements of Dairy Cattle, 8th edition, feed library",
                "National Academies Press",
            ),
            Self::TeffSurvey2015 => cite(
                "State university extension",
                2015,
                "Teff hay of the Pacific North-West, about two dozen cuttings",
                "extension fact sheet",
            ),
            Self::Feedipedia => Citation {
                authors: "INRAE, CIRAD, AFZ, FAO",
                year: None,
                title: "Feedipedia",
                appeared: "data sheets, read second-hand",
            },
            Self::ForageLaboratory => Citation {
                authors: "Equine forage laboratory",
                year: None,
                title: "Library of means by forage class",
                appeared: "quoted by an equine research firm",
            },
            Self::Eceim2019 => cite(
                "Durham et al.",
                2019,
                "ECEIM consensus statement on equine metabolic syndrome",
                "J Vet Intern Med 33:335",
            ),
            Self::Harris2017 => cite(
                "Harris et al.",
                2017,
                "Feeding conserved forage to horses",
                "Animal 11",
            ),
            Self::Frank2010 => cite(
                "Frank et al.",
                2010,
                "Equine metabolic syndrome",
                "J Vet Intern Med 24",
            ),
            Self::Longland2011 => cite(
                "Longland, Barfoot, Harris",
                2011,
                "Effects of soaking on the water-soluble carbohydrate and crude protein content of hay",
                "Vet Rec 168:618",
            ),
            Self::Longland2014 => cite(
                "Longland, Barfoot, Harris",
                2014,
                "Effect of period, water temperature and agitation on loss of water-soluble carbohydrates and protein from grass hay",
                "Vet Rec",
            ),
            Self::Longland2016 => cite(
                "Longland, Barfoot, Harris",
                2016,
                "Efficacy of wearing grazing muzzles for 10 hours per day",
                "J Equine Vet Sci",
            ),
            Self::Longland2021 => cite(
                "Longland, Barfoot, Harris",
                2021,
                "Strip-grazing: reduced pasture dry matter intake and bodyweight gain in ponies",
                "Equine Vet J",
            ),
            Self::Martinson2012 => cite(
                "Martinson et al.",
                2012,
                "The effect of soaking on carbohydrate removal and dry matter loss in orchardgrass and alfalfa hays",
                "J Equine Vet Sci 32:332",
            ),
            Self::MartinsonFeeders2012 => cite(
                "Martinson et al.",
                2012,
                "Round-bale feeder design affects hay waste and economics during horse feeding",
                "J Anim Sci 90:1047",
            ),
            Self::McGowan2013 => cite(
                "McGowan et al.",
                2013,
                "Dietary restriction in combination with a nutraceutical supplement for the management of equine metabolic syndrome",
                "Vet J",
            ),
            Self::Argo2012 => cite(
                "Argo et al.",
                2012,
                "Weight loss resistance: a further consideration for the nutritional management of obese Equidae",
                "Vet J 194",
            ),
            Self::Argo2015 => cite(
                "Argo, Dugdale, McGowan",
                2015,
                "Considerations for the use of restricted, soaked grass hay diets to promote weight loss",
                "Vet J 206:170",
            ),
            Self::Dugdale2010 => cite(
                "Dugdale et al.",
                2010,
                "Effect of dietary restriction on body condition, composition and welfare of overweight and obese pony mares",
                "Equine Vet J 42",
            ),
            Self::Bruynsteen2015 => cite(
                "Bruynsteen et al.",
                2015,
                "Effect of restricted energy intake on weight loss in obese Shetland ponies",
                "Vet J",
            ),
            Self::Dosi2020 => cite(
                "Dosi et al.",
                2020,
                "Inclusion of straw in the winter diet of native ponies at grass",
                "Vet Rec",
            ),
            Self::Jansson2021 => cite(
                "Jansson et al.",
                2021,
                "Straw as an alternative to grass forage in horses",
                "Animals 11:2197",
            ),
            Self::MooreColyer2014 => cite(
                "Moore-Colyer et al.",
                2014,
                "The effect of soaking and steaming hay on its nutritional and hygienic value",
                "PLoS One 9:e114079",
            ),
            Self::Bochnia2021 => cite(
                "Bochnia et al.",
                2021,
                "Soaking of low-sugar meadow hays",
                "J Equine Vet Sci",
            ),
            Self::Glatter2021 => cite(
                "Glatter et al.",
                2021,
                "Microbial growth on soaked and steamed hay in storage",
                "Animals 11:2729",
            ),
            Self::Carslake2018 => cite(
                "Carslake et al.",
                2018,
                "Insulinaemic and glycaemic responses to three forages in ponies",
                "Vet J 235:83",
            ),
            Self::Macon2023 => cite(
                "Macon et al.",
                2023,
                "Postprandial insulin responses to nonstructural carbohydrate in a meal",
                "Equine Vet J",
            ),
            Self::Kerley2025 => cite(
                "Kerley et al.",
                2025,
                "A threshold of nonstructural carbohydrate a meal for insulin-dysregulated horses",
                "J Equine Vet Sci",
            ),
            Self::Luthersson2009 => cite(
                "Luthersson et al.",
                2009,
                "Risk factors associated with equine gastric ulceration syndrome",
                "Equine Vet J 41",
            ),
            Self::Husted2009 => cite(
                "Husted et al.",
                2009,
                "Effect of paddock vs stall housing on 24 hour gastric pH",
                "Equine Vet J 41",
            ),
            Self::Glunk2014Nets => cite(
                "Glunk et al.",
                2014,
                "The effect of hay net design on rate of forage consumption",
                "J Equine Vet Sci 34:986",
            ),
            Self::Glunk2014Muzzle => cite(
                "Glunk et al.",
                2014,
                "The effect of a grazing muzzle on pasture intake",
                "J Equine Vet Sci",
            ),
            Self::Ellis2015 => cite(
                "Ellis et al.",
                2015,
                "Effect of hay net hole size and layering on feeding time",
                "conference abstract",
            ),
            Self::Ince2011 => cite(
                "Ince et al.",
                2011,
                "Changes in proportions of dry matter intakes by ponies with access to pasture and haylage for 3 and 20 hours a day",
                "J Equine Vet Sci 31",
            ),
            Self::Shewmaker2006 => cite(
                "Shewmaker et al.",
                2006,
                "Diurnal variation of nonstructural carbohydrate in tall fescue",
                "Grass Forage Sci 61:413",
            ),
            Self::DowlerThesis => Citation {
                authors: "Dowler",
                year: None,
                title: "Dry matter intake of horses grazing for eight hours",
                appeared: "thesis, North Carolina State University",
            },
            Self::WattsSirois2003 => cite(
                "Watts, Sirois",
                2003,
                "Soaking hay to remove soluble carbohydrate",
                "practice report",
            ),
            Self::Wylie2016 => cite(
                "Wylie et al.",
                2016,
                "Identifying the clinical signs of laminitis",
                "Equine Vet J",
            ),
            Self::MerckManual => Citation {
                authors: "Merck",
                year: None,
                title: "Veterinary Manual, nutrition of horses",
                appeared: "online edition",
            },
            Self::DonkeySanctuary => Citation {
                authors: "The Donkey Sanctuary",
                year: None,
                title: "Care and feeding of donkeys",
                appeared: "fact sheets",
            },
            Self::Wooldridge2017 => cite(
                "Wooldridge",
                2017,
                "Managing the overweight horse",
                "North American Veterinary Community conference",
            ),
            Self::BalancerLabels => Citation {
                authors: "Feed labels",
                year: None,
                title: "Vitamin and mineral balancers, general profile",
                appeared: "no single label",
            },
            Self::Javma2009 => cite(
                "JAVMA",
                2009,
                "Hyperlipaemia in donkeys",
                "J Am Vet Med Assoc 234:915",
            ),
            Self::OsuHayMoisture => Citation {
                authors: "OSU extension",
                year: None,
                title: "Moisture of hay at baling",
                appeared: "fact sheet",
            },
            Self::HuhnkeHayHeating => Citation {
                authors: "Huhnke",
                year: None,
                title: "Heating of stored hay",
                appeared: "extension fact sheet",
            },
            Self::PennStateAgronomyGuide => Citation {
                authors: "Penn State Extension",
                year: None,
                title: "The Agronomy Guide, part 1 section 8, pasture",
                appeared: "Table 1.8-9, suggested paddock sizes",
            },
            Self::ExtensionPastureDensity => Citation {
                authors: "eXtension",
                year: None,
                title: "Estimating pasture dry matter from height",
                appeared: "extension pages, dairy",
            },
            Self::NrcsGrazingStick => Citation {
                authors: "NRCS, Cornell Cooperative Extension",
                year: None,
                title: "The grazing stick: dry matter an inch by stand",
                appeared: "fact sheets",
            },
            Self::UmnGrazing => Citation {
                authors: "University of Minnesota Extension",
                year: None,
                title: "Managing pastures for horses",
                appeared: "extension pages",
            },
            Self::WeinertNelson2021 => cite(
                "Weinert-Nelson et al.",
                2021,
                "Crabgrass in horse pastures: yield, nutrients and grazing",
                "J Equine Vet Sci",
            ),
            Self::Jensen2014 => cite(
                "Jensen et al.",
                2014,
                "Water-soluble carbohydrates of fifteen cool-season grasses",
                "Crop Sci 54:2328",
            ),
            Self::OsuOrchardgrass => Citation {
                authors: "Oregon State University Extension",
                year: None,
                title: "Carbohydrates of pasture grasses for horses",
                appeared: "SR 1079",
            },
            Self::Siciliano2017 => cite(
                "Siciliano, Gill, Bowman",
                2017,
                "Effect of sward height on pasture nonstructural carbohydrate and insulin",
                "J Equine Vet Sci",
            ),
            Self::Blaney1981 => cite(
                "Blaney, Gartner, McKenzie",
                1981,
                "The effects of oxalate in some tropical grasses on the availability to horses of calcium, phosphorus and magnesium",
                "J Agric Sci 97:507",
            ),
            Self::OsuEndophyte => Citation {
                authors: "Oregon State University",
                year: None,
                title: "Endophyte Service Laboratory: levels of ergovaline and lolitrem B",
                appeared: "service page",
            },
            Self::TeffNitrateTrial => Citation {
                authors: "Teff hay trial",
                year: None,
                title: "Soaking teff hay high in nitrate, six bales",
                appeared: "abstract",
            },
            Self::Kirton2024 => cite(
                "Kirton et al.",
                2024,
                "Distance walked by horses on a track and on strip grazing",
                "Equine Vet J",
            ),
            Self::McIntosh2007 => cite(
                "McIntosh",
                2007,
                "Circadian and seasonal variation in pasture nonstructural carbohydrates",
                "thesis, Virginia Tech",
            ),
            Self::Mayland2003 => cite(
                "Mayland et al.",
                2003,
                "Sugar of tall fescue after light and after dark",
                "abstract",
            ),
            Self::MenziesGow2010 => cite(
                "Menzies-Gow et al.",
                2010,
                "Prevalence, incidence and season of laminitis in East Anglia",
                "Vet Rec 167:690",
            ),
            Self::Pollard2019 => cite(
                "Pollard et al.",
                2019,
                "Incidence and clinical signs of owner-reported equine laminitis in Great Britain",
                "BMC Vet Res 15:59",
            ),
            Self::Hopkins1920 => cite("Hopkins", 1920, "The bioclimatic law", "J Wash Acad Sci 10"),
        }
    }
}
