// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/survey_day/bands_view.h"
#include "app/days/survey_day/check_view.h"
#include "app/days/survey_day/drawing_view.h"
#include "app/days/survey_day/hypsography_view.h"
#include "app/days/survey_day/lead_line_view.h"
#include "app/days/survey_day/next_view.h"
#include "app/days/survey_day/sections_view.h"
#include "app/days/survey_day/shoreline_view.h"
#include "app/days/survey_day/soundings_view.h"
#include "app/days/survey_day/survey_day_fields.h"
#include "app/days/survey_day/weed_view.h"
#include "tests/app/support/star_water.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace survey_day = days::survey_day;
using soundings::Verdict;

namespace {

const wording::Words metric(preferences::UnitSystem::metric);
const wording::Words imperial(preferences::UnitSystem::imperial);

soundings::SurveyDay dayNamed(std::string name, std::size_t soundings) {
    soundings::SurveyDay day;
    day.id = soundings::SurveyDayId(7);
    day.name = std::move(name);
    day.soundings.edit().resize(soundings);
    return day;
}

QString factOf(const std::vector<survey_day::SectionFact>& card, const QString& name) {
    const auto found = std::ranges::find(card, name, &survey_day::SectionFact::first);
    return found == card.end() ? QStringLiteral("(nothing)") : found->second;
}

/// Two days of which the second has no gauge reading and is tied to the first.
water::Water twoDays() {
    water::Water water;
    water.days = {dayNamed("first", 1200), dayNamed("second", 34)};
    water.days[0].gauge = soundings::Gauge::constant(units::WaterLevel::metresOnGauge(0.3));
    return water;
}

water::Derived checkedTwoDays(double offset_m) {
    auto checked = std::make_shared<water::CheckedSurvey>();
    checked->survey.days.resize(2);
    checked->survey.days[0].verdicts = {Verdict::kept, Verdict::spike, Verdict::kept};
    checked->survey.days[1].verdicts = {Verdict::dropOut, Verdict::dropOut, Verdict::kept};
    for (auto& day : checked->survey.days) {
        day.depth_m.resize(3);
        day.points.resize(3);
    }
    checked->check = {.count = 61, .mean_m = -0.04, .rms_m = 0.29};
    checked->tie.offsets = {units::Length(), units::Length::metres(offset_m)};
    checked->tie.offsetErrors = {units::Length(), units::Length::metres(0.01)};
    checked->tie.isHeld = {true, false};
    checked->tie.isTied = {true, true};
    checked->tie.crossingsWithOthers = {61, 61};
    checked->tie.before.rms_m = 0.29;
    checked->tie.after.rms_m = 0.11;
    water::Derived derived;
    derived.checked = std::move(checked);
    return derived;
}

TEST(SoundingsView, CountsDaysAndSoundingsAndSaysWhereNobodyReadTheGauge) {
    const water::Water water = twoDays();
    const auto view = survey_day::soundingsViewOf({water, {}, metric, {}});
    EXPECT_EQ(view.state, "2 days, 1,234 soundings");
    ASSERT_EQ(view.rows.size(), 2U);
    EXPECT_EQ(view.rows[0], (QStringList{"first", "1,200", "+0.30 m", ""}));
    EXPECT_EQ(view.rows[1][2], "not read");
    EXPECT_TRUE(view.others.isEmpty());
}

TEST(SoundingsView, SaysNoneYetForAnEmptyWater) {
    const water::Water water;
    EXPECT_EQ(survey_day::soundingsViewOf({water, {}, metric, {}}).state, "none yet");
}

TEST(SurveyDayFields, ShowAFineDraftAndLeaveTheUnknownEmpty) {
    soundings::SurveyDay day = dayNamed("first", 1);
    day.sounder.draft = units::Depth::metres(0.25);
    const auto fields = survey_day::surveyDayFieldsOf(day, metric);
    EXPECT_EQ(fields.draft, "0.25 m");
    EXPECT_EQ(fields.soundSpeed, "1500 m/s");
    EXPECT_TRUE(fields.level.isEmpty());
    EXPECT_TRUE(fields.waterTemperature.isEmpty());
    EXPECT_EQ(survey_day::surveyDayFieldsOf(day, imperial).draft, "0.82 ft");
}

TEST(LeadLineView, ShowsDepthBottomAndPlaceOfEach) {
    water::Water water;
    water.leadLine = {{soundings::LeadLineId(1),
                       {3.1, 55.2},
                       units::Depth::metres(3.6),
                       soundings::Bottom::gravel},
                      {soundings::LeadLineId(2), {3.1, 55.2}, units::Depth::metres(5.0), {}}};
    const auto view = survey_day::leadLineViewOf({water, {}, metric, {}});
    ASSERT_EQ(view.rows.size(), 2U);
    EXPECT_EQ(view.rows[0][0], "3.6 m");
    EXPECT_EQ(view.rows[0][1], "gravel");
    EXPECT_TRUE(view.rows[1][1].isEmpty());
}

TEST(LeadLineView, AllowsForTheLevelOfTheDay) {
    const auto chart = units::WaterLevel::metresOnGauge(1.0);
    const auto high = units::WaterLevel::metresOnGauge(1.4);
    EXPECT_NEAR(survey_day::belowChartLevel(units::Depth::metres(5.0), high, chart).inMetres(), 4.6,
                1e-12);
    EXPECT_EQ(survey_day::belowChartLevel(units::Depth::metres(5.0), {}, chart).inMetres(), 5.0);
}

TEST(LeadLineView, NamesEveryBottomAndFindsItAgain) {
    for (int row = 0; row < survey_day::bottomNames().size(); ++row) {
        EXPECT_EQ(survey_day::rowOf(survey_day::bottomAt(row)), row);
    }
}

TEST(CheckView, OffersADelayOnlyWhereItIsWorthTaking) {
    water::Water water = twoDays();
    water::Derived derived = checkedTwoDays(0.0);
    auto checked = std::make_shared<water::CheckedSurvey>(*derived.checked);
    checked->delays = {{true, 1.24, 0.05, 61, 0.31, 0.12}, {true, 0.1, 0.05, 61, 0.31, 0.12}};
    derived.checked = checked;
    const auto view = survey_day::checkViewOf({water, derived, metric, {}});
    ASSERT_EQ(view.delays.size(), 1U);
    EXPECT_TRUE(view.delays[0].isOffered);
    EXPECT_TRUE(view.delays[0].words.startsWith("first: positions 1.2 s late (±0.1 s), from 61"))
        << view.delays[0].words.toStdString();
    water.days[0].agreedDelay_s = -0.8;
    const auto agreed = survey_day::checkViewOf({water, derived, metric, {}});
    ASSERT_EQ(agreed.delays.size(), 1U);
    EXPECT_TRUE(agreed.delays[0].isAgreed);
    EXPECT_EQ(agreed.delays[0].words, "first: positions 0.8 s early, as agreed");
}

TEST(ShorelineView, WarnsThatAnAssumedShoreIsAGuess) {
    const water::Water water;
    const auto view = survey_day::shorelineViewOf({water, {}, metric, {}});
    EXPECT_FALSE(view.hasShore);
    EXPECT_EQ(view.state, "none yet");
    EXPECT_TRUE(view.facts.contains("guess"));
}

TEST(CheckView, CountsReasonsTheMostFrequentFirst) {
    const water::Water water = twoDays();
    const auto view = survey_day::checkViewOf({water, checkedTwoDays(0.4), metric, {}});
    ASSERT_EQ(view.setAside.size(), 2U);
    EXPECT_EQ(view.setAside[0], (QStringList{"no echo", "2"}));
    EXPECT_EQ(view.setAside[1], (QStringList{"spike", "1"}));
    EXPECT_EQ(view.state, "3 set aside, crossings ±0.29 m");
}

TEST(CheckView, OffersWhatTheCrossingsAskForAndSaysWhatItBrings) {
    const water::Water water = twoDays();
    const auto view = survey_day::checkViewOf({water, checkedTwoDays(0.4), metric, {}});
    ASSERT_EQ(view.offers.size(), 2U);
    EXPECT_FALSE(view.offers[0].isOffered);
    EXPECT_TRUE(view.offers[1].isOffered);
    EXPECT_EQ(view.offers[1].words, "second: add +0.40 m (±0.02 m), from 61 crossings");
    EXPECT_TRUE(view.gain.contains("0.11 m instead of 0.29 m"));
}

TEST(CheckView, OffersNothingBelowTheStepOfASounder) {
    const water::Water water = twoDays();
    const auto view = survey_day::checkViewOf({water, checkedTwoDays(0.02), metric, {}});
    EXPECT_FALSE(view.offers.at(1).isOffered);
    EXPECT_TRUE(view.gain.isEmpty());
}

TEST(CheckView, ShowsAnAgreedOffsetAsTakenAndNotAsAnOffer) {
    water::Water water = twoDays();
    water.days[1].agreedOffset = units::Length::metres(0.4);
    const auto view = survey_day::checkViewOf({water, checkedTwoDays(0.0), metric, {}});
    EXPECT_TRUE(view.offers.at(1).isAgreed);
    EXPECT_FALSE(view.offers.at(1).isOffered);
}

TEST(DrawingView, SaysThatNothingIsDrawnYet) {
    const water::Water water;
    const auto view = survey_day::drawingViewOf({water, {}, metric, {water::Step::draw}});
    EXPECT_EQ(view.state, "not drawn yet");
    EXPECT_FALSE(view.canDraw);
    EXPECT_TRUE(view.isStale);
}

TEST(DrawingView, TellsTheSharesOfTrustOfTheWholeWater) {
    const water::Water water = support::starWater();
    const auto view = survey_day::drawingViewOf({water, support::starDerived(), metric, {}});
    EXPECT_FALSE(view.isStale);
    EXPECT_NEAR(view.trustShare[0] + view.trustShare[1] + view.trustShare[2], 1.0, 1e-9);
    EXPECT_TRUE(view.trust.contains("sounded"));
}

TEST(DrawingView, SaysInWordsWhatWasChosenFromTheSoundings) {
    water::Water water = support::starWater();
    water::Derived derived = support::starDerived();
    auto drawn = std::make_shared<surface::DrawnWater>(*derived.drawn);
    drawn->report.cell = units::Length::metres(5.0);
    drawn->report.stiffness = 1000.0;
    drawn->report.contourStiffness = 10.0;
    drawn->report.heldOut = surface::HeldOutError{0.17, 0.24, 1480};
    derived.drawn = drawn;
    const auto chosen = survey_day::drawingViewOf({water, derived, metric, {}}).chosen;
    EXPECT_TRUE(chosen.contains("Cells of 5.0 m, chosen from")) << chosen.toStdString();
    EXPECT_TRUE(chosen.contains("Strong smoothing")) << chosen.toStdString();
    EXPECT_TRUE(chosen.contains("1,480 soundings that were held out")) << chosen.toStdString();
    EXPECT_TRUE(chosen.contains("0.17 m")) << chosen.toStdString();
    water.settings.cell = units::Length::metres(5.0);
    EXPECT_TRUE(survey_day::drawingViewOf({water, derived, metric, {}})
                    .chosen.startsWith("Cells of 5.0 m, as you set them."));
}

/// The star with a form at another level: 1 m lower, and half as much of everything.
water::Derived lowStar() {
    water::Derived derived = support::starDerived();
    auto chart = std::make_shared<water::WaterForm>(*derived.form);
    auto today = std::make_shared<water::WaterForm>(*derived.form);
    today->rise = units::Length::metres(-1.0);
    const auto fill = [](surface::Hypsography& form, double share) {
        form.maxDepth = units::Depth::metres(4.0);
        form.area = units::Area::hectares(40.0 * share);
        for (int k = 0; k <= 40; ++k) {
            const double left = 1.0 - k / 40.0;
            form.steps.push_back({units::Depth::metres(0.1 * k),
                                  units::Area::hectares(40.0 * share * left),
                                  units::Volume::cubicMetres(8e5 * share * left * left)});
        }
    };
    fill(chart->hypsography, 1.0);
    fill(today->hypsography, 0.5);
    derived.form = chart;
    derived.today = today;
    return derived;
}

TEST(HypsographyView, CopiesAsATableOfBareNumbersUnderTheirUnits) {
    const water::Water water = support::starWater();
    water::Derived derived = lowStar();
    derived.today = derived.form;
    const auto view = survey_day::hypsographyViewOf({water, derived, metric, {}});
    const QStringList lines = view.asText().split('\n');
    EXPECT_EQ(lines.at(0), "Depth, m\tArea, ha\tVolume, 1000 m³");
    EXPECT_EQ(lines.at(1), "0\t40.00\t800.0");
    const auto halfway =
        std::find_if(view.rows.begin(), view.rows.end(),
                     [](const QStringList& row) { return row.front() == QLatin1String("2"); });
    ASSERT_NE(halfway, view.rows.end());
    EXPECT_EQ(*halfway, (QStringList{"2", "20.00", "200.0"}));
    EXPECT_LE(view.rows.size(), 31U);
    EXPECT_TRUE(view.chartArea.empty()) << "one curve where both levels are the same";
}

TEST(HypsographyView, HasBothLevelsSideBySideWhereTheyDiffer) {
    const water::Water water = support::starWater();
    const auto view = survey_day::hypsographyViewOf({water, lowStar(), imperial, {}});
    EXPECT_EQ(view.columns, (QStringList{"Depth, ft", "Area, ac", "Volume, ac-ft", "Area today, ac",
                                         "Volume today, ac-ft"}));
    EXPECT_EQ(view.rows.front(), (QStringList{"0", "98.84", "648.6", "49.42", "324.3"}));
    EXPECT_EQ(view.rows.at(1).front(), "0.5"); // a round step of feet
    EXPECT_FALSE(view.chartArea.empty());
    EXPECT_NEAR(view.area.front().x(), 0.5 * view.chartArea.front().x(), 1e-9);
    EXPECT_NEAR(view.area.back().y(), units::Depth::metres(4.0).inFeet(), 0.1);
}

TEST(HypsographyView, IsEmptyBeforeThereIsADrawing) {
    const water::Water water;
    EXPECT_TRUE(survey_day::hypsographyViewOf({water, {}, metric, {}}).rows.empty());
}

TEST(BandsView, WritesTheEdgesSoThatTheyCanBeTypedAgain) {
    const water::Water water;
    const auto view = survey_day::bandsViewOf({water, {}, imperial, {}});
    EXPECT_EQ(view.limit, "30 ft");
    EXPECT_TRUE(view.edges.startsWith("6.6, 13.1, 19.7, 30, "));
}

TEST(BandsView, TellsHowMuchWaterIsWorthFishingInBothUnits) {
    const water::Water water = support::starWater();
    water::Derived derived = support::starDerived();
    ASSERT_TRUE(derived.form != nullptr);
    auto form = std::make_shared<water::WaterForm>(*derived.form);
    form->hypsography.area = units::Area::hectares(100.0);
    form->hypsography.steps = {{units::Depth::metres(0.0), units::Area::hectares(100.0), {}},
                               {units::Depth::metres(9.144), units::Area::hectares(40.0), {}},
                               {units::Depth::metres(20.0), units::Area::hectares(0.0), {}}};
    derived.form = derived.today = form;
    EXPECT_EQ(survey_day::bandsViewOf({water, derived, metric, {}}).worthFishing,
              "Down to the limit: 60.0 ha (148 ac), 60 % of the water at chart level.");
    form->rise = units::Length::metres(-0.4);
    EXPECT_TRUE(survey_day::bandsViewOf({water, derived, metric, {}})
                    .worthFishing.contains("at today's level"));
}

TEST(WeedView, ShowsNoHeightWhereThereIsNoWeed) {
    water::Water water;
    weed::WeedNote none;
    none.height = units::Length::metres(0.0);
    weed::WeedNote thick;
    thick.growth = weed::Growth::thick;
    thick.height = units::Length::metres(1.2);
    water.weedNotes = {none, thick};
    const auto view = survey_day::weedViewOf({water, {}, metric, {}});
    EXPECT_EQ(view.state, "2 notes");
    EXPECT_EQ(view.notes[0][1], "");
    EXPECT_EQ(view.notes[1][0], "thick");
    EXPECT_EQ(view.notes[1][1], "1.2 m");
}

TEST(WeedView, TellsWhatWasDrawnWhenAndWhatFades) {
    water::Water water;
    water.frame = geo::WaterFrame::centredOn({3.1, 55.2}).value();
    std::vector<geo::LonLat> corners;
    for (const geo::WaterPoint p : {geo::WaterPoint{0.0, 0.0}, {100.0, 0.0}, {100.0, 200.0}}) {
        corners.push_back(water.frame->toEarth(p));
    }
    weed::WeedNote line = weed::noteOver(weed::Extent::line, corners);
    line.seen = units::dayFrom("2025-08-20");
    water.weedNotes = {line, weed::noteOver(weed::Extent::area, corners)};
    water::Derived derived;
    auto map = std::make_shared<weed::WeedMap>();
    map->notesUsed = 2;
    map->notesFaded = 1;
    derived.weed = map;
    const auto view = survey_day::weedViewOf({water, derived, metric, {}});
    EXPECT_EQ(view.notes[0][2], "Wed 20 Aug 2025");
    EXPECT_EQ(view.notes[0][3], "300 m of line");
    EXPECT_EQ(view.notes[1][2], "");
    EXPECT_TRUE(view.notes[1][3].startsWith("1.0 ha round ")) << view.notes[1][3].toStdString();
    EXPECT_TRUE(view.growth.contains("1 note is of an earlier year")) << view.growth.toStdString();
}

TEST(SectionsView, HasACardForEveryRow) {
    const water::Water water = support::starWater();
    const water::Derived derived = support::starDerived();
    const auto view = survey_day::sectionsViewOf({water, derived, metric, {}},
                                                 survey_day::countSections(water, derived));
    ASSERT_TRUE(derived.sections != nullptr);
    EXPECT_EQ(view.rows.size(), derived.sections->sections.size());
    EXPECT_EQ(view.cards.size(), view.rows.size());
    EXPECT_EQ(view.wanted, "4.0 ha");
}

TEST(SectionsView, TellsEffortAndFishOfASectionAndWhichWereNeverFished) {
    water::Water water = support::starWater();
    water.plan.day.wind = {units::Bearing(), units::Speed::metresPerSecond(6.0)};
    water::Derived derived = support::starDerived();
    // The cell under each middle is enough to know a section by.
    auto map = std::make_shared<sections::SectionMap>(*derived.sections);
    for (std::size_t i = 0; i < map->sections.size(); ++i) {
        const grid::GridFrame& frame = map->sectionOfCell.frame();
        const std::size_t cell = frame.index(frame.cellOf(map->sections[i].middle));
        map->sections[i].cells = {cell};
        map->sectionOfCell[cell] = static_cast<sections::SectionNumber>(i);
    }
    derived.sections = map;
    const auto& all = map->sections;
    ASSERT_GE(all.size(), 2U);
    logbook::Stay stay;
    stay.place = water.frame->toEarth(all[1].middle);
    stay.end = stay.start + std::chrono::hours(4);
    stay.rods = 3;
    stay.runs.resize(3);
    stay.runs[0].landed = stay.runs[1].landed = true;
    stay.runs[2].landed = false;
    water.log = {stay};
    const auto view = survey_day::sectionsViewOf({water, derived, metric, {}},
                                                 survey_day::countSections(water, derived));
    EXPECT_EQ(view.rows[0].back(), "never");
    EXPECT_EQ(view.rows[1].back(), "2 in 12 h");
    EXPECT_EQ(factOf(view.cards[0], "Fished"), "Never fished");
    EXPECT_TRUE(factOf(view.cards[1], "Fished")
                    .startsWith("2 fish in 12 rod-hours (1 stay, 0 without a fish)"))
        << factOf(view.cards[1], "Fished").toStdString();
    EXPECT_TRUE(view.coverage.startsWith(
        QStringLiteral("%1 of %2 sections never fished").arg(all.size() - 1).arg(all.size())))
        << view.coverage.toStdString();
    EXPECT_TRUE(factOf(view.cards[0], "Tomorrow").contains("of open water upwind"));
    // Its one cell lies in one zone, or in none.
    const auto& zones = *derived.structure;
    const structure::ZoneNumber zone = zones.zoneOfCell[all[1].cells.front()];
    const QString kind =
        zone == structure::noZone
            ? QStringLiteral("none stands out")
            : QString::fromUtf8(
                  structure::nameOf(zones.zones[static_cast<std::size_t>(zone)].kind).data()) +
                  QChar::Nbsp + QStringLiteral("100") + QChar::Nbsp + '%';
    EXPECT_EQ(factOf(view.cards[1], "Structure"), kind);
    EXPECT_TRUE(factOf(view.cards[1], "Area").contains("ha ("));
}

TEST(SectionChangesView, TellsWhichChangeDoesNotFitTheMapAnyMore) {
    water::Water water = support::starWater();
    water::Derived derived = support::starDerived();
    EXPECT_FALSE(survey_day::sectionChangesViewOf({water, derived, metric, {}}).hasAny);
    water.sectionChanges.resize(2);
    auto map = std::make_shared<sections::SectionMap>(*derived.sections);
    map->refused = {{1, {base::ErrorKind::unusableInput, "the two sections do not touch", "", ""}}};
    derived.sections = map;
    const auto view = survey_day::sectionChangesViewOf({water, derived, metric, {}});
    EXPECT_TRUE(view.hasAny && view.canSplit && view.canJoin);
    EXPECT_TRUE(view.words.startsWith("2 changes by hand"));
    EXPECT_TRUE(
        view.words.contains("Change 2 does not fit this map: the two sections do not touch"))
        << view.words.toStdString();
}

TEST(NextView, SaysHowLongTheTripIsAndWhatItBrings) {
    EXPECT_EQ(survey_day::nextViewOf(nullptr, std::nullopt, metric).state, "not asked yet");
    surface::SurveyTrip trip;
    trip.lines = {{.start = {0.0, 0.0},
                   .end = {0.0, 200.0},
                   .length = units::Length::metres(200.0),
                   .gain_m3 = 300.0},
                  {.start = {0.0, 200.0},
                   .end = {100.0, 200.0},
                   .length = units::Length::metres(100.0),
                   .gain_m3 = 100.0}};
    trip.duration = std::chrono::minutes(95);
    trip.distance = units::Length::metres(1500.0);
    trip.meanHalfWidthBefore = units::Length::metres(0.8);
    trip.meanHalfWidthAfter = units::Length::metres(0.6);
    trip.lines[0].duration = std::chrono::seconds(133);
    trip.lines[1].duration = std::chrono::seconds(20);
    const auto frame = geo::WaterFrame::centredOn({3.1, 55.2}).value();
    const auto view = survey_day::nextViewOf(&trip, frame, metric, 0);
    EXPECT_EQ(view.rows.at(0).at(3), "2");
    EXPECT_EQ(view.rows.at(1).at(3), "1") << "no line takes no time";
    EXPECT_EQ(view.line, "Line 1: From 55.20000 N  3.10000 E to 55.20180 N  3.10000 E.");
    EXPECT_TRUE(survey_day::nextViewOf(&trip, frame, metric).line.isEmpty());
    EXPECT_EQ(view.state, "2 lines, 1 h 35");
    EXPECT_TRUE(view.trip.contains("±0.80 m") && view.trip.contains("±0.60 m"));
    ASSERT_EQ(view.rows.size(), 2U);
    EXPECT_TRUE(view.rows[0].contains("000°") && view.rows[0].contains("75 %"));
    EXPECT_TRUE(view.rows[1].contains("090°") && view.rows[1].contains("25 %"));
}

} // namespace
