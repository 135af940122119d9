// SPDX-License-Identifier: GPL-3.0-or-later
// What notes and leads say, in numbers, and the map that follows from them by its formula.
#include "core/weed/growth_limit.h"
#include "core/weed/map_weed.h"
#include "core/weed/weed_evidence.h"
#include "tests/support/made_up_water.h"

#include <array>
#include <cmath>
#include <numeric>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace {

using soundings::Bottom;
using structure::ZoneKind;
using support::MadeUpWater;
using testing::HasSubstr;
using units::Depth;
using units::Length;
using weed::Finding;
using weed::Growth;
using weed::GrowthRelation;
using weed::WeedMap;
using weed::WeedNote;
using weed::WeedSettings;

// Chambers and Kalff 1985, Canfield and others 1985, Caffrey and others 2007, at Secchi depths of
// 1 m, where the logarithm is 0, and of 10 m, where it is 1.
TEST(GrowthRelations, AreThoseThatWerePublished) {
    struct Case {
        GrowthRelation relation;
        double atOne_m;
        double atTen_m;
        const char* name;
    };
    for (const Case& c : {Case{GrowthRelation::chambersKalffWorld, 1.40 * 1.40, 2.73 * 2.73,
                               "Chambers and Kalff 1985 (world)"},
                          Case{GrowthRelation::chambersKalffQuebec, 1.32 * 1.32, 2.46 * 2.46,
                               "Chambers and Kalff 1985 (Quebec)"},
                          Case{GrowthRelation::canfield, std::pow(10.0, 0.26), std::pow(10.0, 0.87),
                               "Canfield and others 1985"},
                          Case{GrowthRelation::caffrey, std::pow(10.0, 0.31), std::pow(10.0, 0.97),
                               "Caffrey and others 2007"},
                          Case{GrowthRelation::caffreyUpper, std::pow(10.0, 0.59),
                               std::pow(10.0, 1.12), "Caffrey and others 2007 (upper envelope)"}}) {
        EXPECT_NEAR(weed::growthLimit(c.relation, Depth::metres(1.0)).inMetres(), c.atOne_m, 1e-9);
        EXPECT_NEAR(weed::growthLimit(c.relation, Depth::metres(10.0)).inMetres(), c.atTen_m, 1e-9);
        EXPECT_EQ(weed::nameOf(c.relation), c.name);
    }
    EXPECT_EQ(weed::growthLimit(GrowthRelation::chambersKalffQuebec, Depth::metres(0.05)), Depth());
}

TEST(GrowthRelations, LeadToTheMeanOfTheFourBestFitsBetweenTheLeastAndTheGreatest) {
    const weed::GrowthRange clear = weed::growthRange(Depth::metres(10.0));
    const std::array fits_m{2.73 * 2.73, 2.46 * 2.46, std::pow(10.0, 0.87), std::pow(10.0, 0.97)};
    EXPECT_NEAR(clear.mid.inMetres(), std::accumulate(fits_m.begin(), fits_m.end(), 0.0) / 4.0,
                1e-9);
    EXPECT_NEAR(clear.low.inMetres(), 2.46 * 2.46, 1e-9);
    EXPECT_NEAR(clear.high.inMetres(), std::pow(10.0, 0.97), 1e-9) << "without the envelope";
}

/// A level water of 3 m, 400 m square.
class Evidence : public testing::Test {
protected:
    WeedNote note(double x_m, Growth growth, std::optional<double> height_m = {}) const {
        WeedNote made;
        made.place = water_.frame.toEarth({x_m, 0.0});
        made.growth = growth;
        if (height_m) {
            made.height = Length::metres(*height_m);
        }
        return made;
    }
    soundings::LeadLineSounding lead(double x_m, std::optional<Bottom> bottom) const {
        return {{}, water_.frame.toEarth({x_m, 0.0}), Depth::metres(1.0), bottom};
    }
    weed::Evidence gathered(const std::vector<WeedNote>& notes,
                            const std::vector<soundings::LeadLineSounding>& leads = {}) const {
        return weed::gathered(notes, leads, water_.frame, water_.depth, 0.8,
                              std::chrono::year(2026));
    }
    base::Result<WeedMap> mapped(const std::vector<WeedNote>& notes, std::optional<Depth> secchi,
                                 const WeedSettings& settings = {},
                                 const std::vector<soundings::LeadLineSounding>& leads = {}) const {
        base::Progress silent;
        return weed::mapWeed(water_.depth, water_.mask, notes, leads, secchi, water_.frame,
                             settings, silent);
    }
    const MadeUpWater water_ = support::plane(200.0, 3.0, 3.0, 5.0);
};

TEST_F(Evidence, OfALineOrAnAreaLiesAllAlongItAndIsOneNote) {
    for (const weed::Extent extent : {weed::Extent::line, weed::Extent::area}) {
        std::vector<geo::LonLat> corners;
        for (const geo::WaterPoint p :
             {geo::WaterPoint{-100.0, 0.0}, {100.0, 0.0}, {100.0, 60.0}, {-100.0, 60.0}}) {
            corners.push_back(water_.frame.toEarth(p));
        }
        WeedNote drawn = weed::noteOver(extent, corners);
        drawn.growth = Growth::thick;
        const weed::Evidence evidence = gathered({drawn});
        EXPECT_EQ(evidence.notesUsed, 1U);
        EXPECT_GT(evidence.findings.size(), 15U);
        const auto farEast =
            std::ranges::max(evidence.findings, {}, [](const Finding& f) { return f.place.x_m; });
        EXPECT_GT(farEast.place.x_m, 80.0);
        double notes = 0.0;
        for (const Finding& found : evidence.findings) {
            notes += found.shareOfNote;
        }
        EXPECT_NEAR(notes, 1.0, 1e-9) << "of depths elsewhere it tells what one note does";
    }
}

TEST_F(Evidence, OfEarlierYearsCountsHalfForEachAndUndatedInFull) {
    WeedNote old = note(0, Growth::thick);
    old.seen = units::dayFrom("2024-08-20");
    WeedNote last = note(20, Growth::none);
    last.seen = units::dayFrom("2025-12-31");
    WeedNote fresh = note(40, Growth::thick);
    fresh.seen = units::dayFrom("2026-01-01");
    WeedNote ahead = note(60, Growth::thick);
    ahead.seen = units::dayFrom("2027-01-01");
    const weed::Evidence evidence = gathered({old, last, fresh, ahead, note(80, Growth::thick)});
    ASSERT_EQ(evidence.findings.size(), 5U);
    const std::array<double, 5> weights{0.25, 0.5, 1.0, 1.0, 1.0};
    for (std::size_t i = 0; i < weights.size(); ++i) {
        EXPECT_DOUBLE_EQ(evidence.findings[i].weight, weights[i]) << i;
    }
    EXPECT_EQ(evidence.notesFaded, 2U);
    EXPECT_EQ(evidence.notesUsed, 5U);
}

TEST_F(Evidence, OfANoteIsItsGrowthAndTheHeightNotedOrUsual) {
    struct Case {
        WeedNote note;
        double weed;
        std::optional<double> height_m;
    };
    for (const Case& c :
         {Case{note(0, Growth::none, 1.5), 0.0, {}}, Case{note(0, Growth::thin), 0.8, 0.2},
          Case{note(0, Growth::thin, 1.5), 0.8, 1.5}, Case{note(0, Growth::thick), 1.0, 0.8},
          Case{note(0, Growth::thick, 2.5), 1.0, 2.5}}) {
        const weed::Evidence evidence = gathered({c.note});
        ASSERT_EQ(evidence.findings.size(), 1U);
        EXPECT_EQ(evidence.notesUsed, 1U);
        EXPECT_EQ(evidence.notesOutside, 0U);
        const Finding& found = evidence.findings[0];
        EXPECT_DOUBLE_EQ(found.weed, c.weed);
        EXPECT_DOUBLE_EQ(found.weight, 1.0);
        ASSERT_EQ(found.height_m.has_value(), c.height_m.has_value());
        EXPECT_NEAR(found.height_m.value_or(0.0), c.height_m.value_or(0.0), 1e-9);
        EXPECT_NEAR(found.depth_m, 3.0, 1e-6);
        EXPECT_NEAR(found.place.x_m, 0.0, 0.01);
    }
}

TEST_F(Evidence, OfALeadIsANoteForWeedHalfANoteAgainstItOrNothing) {
    struct Case {
        std::optional<Bottom> bottom;
        double weed;
        double weight;
    };
    for (const Case& c : {Case{Bottom::weed, 1.0, 1.0}, Case{Bottom::soft, 0.0, 0.5},
                          Case{Bottom::gravel, 0.0, 0.5}, Case{Bottom::rock, 0.0, 0.5}}) {
        const auto findings = gathered({}, {lead(50.0, c.bottom)}).findings;
        ASSERT_EQ(findings.size(), 1U);
        EXPECT_DOUBLE_EQ(findings[0].weed, c.weed);
        EXPECT_DOUBLE_EQ(findings[0].weight, c.weight);
        EXPECT_FALSE(findings[0].height_m);
        EXPECT_NEAR(findings[0].depth_m, 3.0, 1e-6) << "as drawn, not as the lead said";
    }
    EXPECT_TRUE(gathered({}, {lead(50.0, {})}).findings.empty());
    EXPECT_TRUE(gathered({}, {lead(900.0, Bottom::weed)}).findings.empty());
    const auto outside = gathered({note(900.0, Growth::thick), note(10.0, Growth::thick)});
    EXPECT_EQ(outside.notesOutside, 1U);
    EXPECT_EQ(outside.notesUsed, 1U);
    EXPECT_EQ(outside.findings.size(), 1U);
}

/// What the depth alone says where all water is 3 m deep and so are all findings.
double prior(double most, double limit_m, double softness, double weed, double notes) {
    const double clarity = most / (1.0 + std::exp((3.0 - limit_m) / (softness * limit_m)));
    return (4.0 * clarity + weed) / (4.0 + notes);
}

TEST_F(Evidence, ShiftsTheMapByItsFormulaOverDistance) {
    const WeedMap map = mapped({note(2.5, Growth::thin, 1.6)}, std::nullopt).value();
    const double before = prior(0.3, 5.5, 0.12, 0.8, 1.0);
    for (const double x_m : {2.5, 42.5, 92.5, 127.5}) {
        const grid::Cell cell = water_.depth.frame().cellOf({x_m, 0.1});
        const double away_m = std::hypot(x_m - 2.5, 2.5);
        const double w = std::exp(-0.5 * std::pow(away_m / 45.0, 2));
        EXPECT_NEAR(map.probability[cell], (0.6 * before + 0.8 * w) / (0.6 + w), 2e-3) << x_m;
        EXPECT_NEAR(map.height_m[cell], (0.3 * 0.8 + 1.6 * w) / (0.3 + w), 3e-3) << x_m;
    }
    // Beyond three standard deviations it says nothing but by its depth.
    const grid::Cell far = water_.depth.frame().cellOf({142.5, 0.1});
    EXPECT_NEAR(map.probability[far], before, 1e-5);
    EXPECT_NEAR(map.height_m[far], 0.8, 1e-5);
}

TEST_F(Evidence, WithClarityTheMapGoesByTheGrowthLimit) {
    for (const double secchi_m : {1.0, 2.0, 4.0}) {
        const WeedMap map = mapped({}, Depth::metres(secchi_m)).value();
        const weed::GrowthRange range = weed::growthRange(Depth::metres(secchi_m));
        EXPECT_EQ(map.growthLimit, range.mid);
        EXPECT_EQ(map.growthLimitLow, range.low);
        EXPECT_EQ(map.growthLimitHigh, range.high);
        EXPECT_NEAR(map.probability[water_.depth.frame().cellOf({0.1, 0.1})],
                    prior(0.7, range.mid.inMetres(), 0.12, 0.0, 0.0), 1e-5)
            << secchi_m;
    }
    WeedSettings autumn;
    autumn.seasonFactor = 0.25;
    EXPECT_NEAR(mapped({}, std::nullopt, autumn)
                    .value()
                    .probability[water_.depth.frame().cellOf({0.1, 0.1})],
                0.25 * prior(0.3, 5.5, 0.12, 0.0, 0.0), 1e-5);
}

TEST_F(Evidence, FadesWithTheDifferenceOfDepth) {
    const MadeUpWater slope = support::plane(200.0, 1.0, 9.0, 5.0);
    WeedNote thick;
    thick.place = slope.frame.toEarth({2.5, 2.5});
    thick.growth = Growth::thick;
    WeedSettings settings;
    settings.priorNotes = 0.1;
    base::Progress silent;
    const WeedMap map = weed::mapWeed(slope.depth, slope.mask, std::vector{thick}, {}, std::nullopt,
                                      slope.frame, settings, silent)
                            .value();
    const auto at = [&](double x_m) {
        return static_cast<double>(map.probability[slope.depth.frame().cellOf({x_m, 2.5})]);
    };
    // 1 m deeper in 50 m: w = gauss(50 / 45) x gauss(1 / 1.5); the depth's own share is as small
    // as a tenth of a note.
    const double deeper_m = 8.0 * 50.0 / 400.0;
    const double w = std::exp(-0.5 * (std::pow(50.0 / 45.0, 2) + std::pow(deeper_m / 1.5, 2)));
    const double here_m = 5.05 + deeper_m;
    const double clarity = 0.3 / (1.0 + std::exp((here_m - 5.5) / 0.66));
    const double byDepth = std::exp(-0.5 * std::pow(deeper_m / 1.5, 2));
    const double before = (4.0 * clarity + byDepth) / (4.0 + byDepth);
    EXPECT_NEAR(at(52.5), (0.1 * before + w) / (0.1 + w), 0.01);
}

TEST_F(Evidence, BedsAreMoreLikelyThanNotAndTheirBorderIsAnEdge) {
    WeedSettings settings;
    settings.leastArea = units::Area::squareMetres(0.0);
    const WeedMap map = mapped({note(2.5, Growth::thick)}, std::nullopt, settings).value();
    const auto& f = water_.depth.frame();
    std::size_t edges = 0;
    for (std::size_t i = 0; i < f.size(); ++i) {
        const structure::ZoneNumber zone = map.zones.zoneOfCell[i];
        if (!water_.mask.isActive(i)) {
            continue;
        }
        EXPECT_EQ(zone != structure::noZone, map.probability[i] > 0.5F);
        if (zone != structure::noZone) {
            const auto kind = map.zones.zones[static_cast<std::size_t>(zone)].kind;
            EXPECT_TRUE(kind == ZoneKind::weedBed || kind == ZoneKind::weedEdge);
            const double away_m =
                std::hypot(f.centre(f.cellAt(i)).x_m - 2.5, f.centre(f.cellAt(i)).y_m);
            edges += kind == ZoneKind::weedEdge ? 1 : 0;
            if (away_m < 20.0) {
                EXPECT_EQ(kind, ZoneKind::weedBed);
            }
        }
    }
    EXPECT_GT(edges, 20U);
    for (const structure::Zone& zone : map.zones.zones) {
        EXPECT_EQ(zone.topEdges.empty(), zone.kind == ZoneKind::weedBed) << zone.name;
        double line_m = 0.0;
        for (const geo::Path& line : zone.topEdges) {
            line_m += geo::lengthOf(line).inMetres();
        }
        EXPECT_NEAR(zone.edgeLength.inMetres(), line_m, 1e-6);
    }
    settings.leastArea = units::Area::hectares(10.0);
    EXPECT_TRUE(
        mapped({note(2.5, Growth::thick)}, std::nullopt, settings).value().zones.zones.empty());
}

TEST_F(Evidence, IsNumberedFromTheLaunch) {
    WeedSettings settings;
    settings.leastArea = units::Area::squareMetres(0.0);
    const std::vector notes{note(-150.0, Growth::thick), note(150.0, Growth::thick)};
    const auto firstEdge = [](const WeedMap& map) {
        for (const structure::Zone& zone : map.zones.zones) {
            if (zone.name == "Weed edge 1") {
                return zone.middle.x_m;
            }
        }
        return 0.0;
    };
    settings.noteReach = Length::metres(20.0);
    settings.unknownProbability = 0.0;
    EXPECT_GT(firstEdge(mapped(notes, std::nullopt, settings).value()), 100.0) << "from north";
    settings.launch = geo::WaterPoint{0.0, -190.0};
    EXPECT_LT(firstEdge(mapped(notes, std::nullopt, settings).value()), -100.0) << "from south";
}

TEST_F(Evidence, EverySettingIsTakenWithinItsRangeAndNamedBeyondIt) {
    struct Case {
        const char* says;
        void (*set)(WeedSettings&, double);
        double low;
        double high;
    };
    const std::vector<Case> cases{
        {"reach of a note (m)", [](auto& s, double v) { s.noteReach = Length::metres(v); }, 5, 500},
        {"depth reach", [](auto& s, double v) { s.noteDepthReach = Depth::metres(v); }, 0.2, 20},
        {"prior is worth", [](auto& s, double v) { s.priorNotes = v; }, 0.1, 20},
        {"in the shallows", [](auto& s, double v) { s.shallowProbability = v; }, 0.05, 0.95},
        {"softness", [](auto& s, double v) { s.limitSoftness = v; }, 0.02, 0.5},
        {"weed where clarity", [](auto& s, double v) { s.unknownProbability = v; }, 0.0, 0.49},
        {"limit where clarity", [](auto& s, double v) { s.unknownLimit = Depth::metres(v); }, 0.5,
         20},
        {"season", [](auto& s, double v) { s.seasonFactor = v; }, 0.0, 1.0},
        {"usual height", [](auto& s, double v) { s.usualHeight = Length::metres(v); }, 0.05, 10},
        {"least size", [](auto& s, double v) { s.leastArea = units::Area::hectares(v); }, 0.0, 10},
        {"width of a weed edge", [](auto& s, double v) { s.edgeWidth = Length::metres(v); }, 1, 50},
    };
    for (const Case& c : cases) {
        for (const double v : {c.low, c.high}) {
            WeedSettings settings;
            c.set(settings, v);
            EXPECT_TRUE(mapped({}, std::nullopt, settings)) << c.says << " " << v;
        }
        for (const double v : {c.low - 0.005, c.high + 0.005}) {
            WeedSettings settings;
            c.set(settings, v);
            const auto refused = mapped({}, std::nullopt, settings);
            ASSERT_FALSE(refused) << c.says << " " << v;
            EXPECT_THAT(refused.error().what, HasSubstr(c.says));
            EXPECT_EQ(refused.error().kind, base::ErrorKind::wrongUse);
        }
    }
    EXPECT_TRUE(mapped({}, Depth::metres(0.01)));
    EXPECT_TRUE(mapped({}, Depth::metres(100.0)));
    EXPECT_FALSE(mapped({}, Depth::metres(0.009)));
    EXPECT_FALSE(mapped({}, Depth::metres(100.1)));
    const WeedSettings usual;
    EXPECT_EQ(usual.noteReach.inMetres(), 45.0);
    EXPECT_EQ(usual.edgeWidth.inMetres(), 6.0);
    EXPECT_EQ(usual.leastArea.inSquareMetres(), 300.0);
}

TEST(GrowthNames, AreFoundAgain) {
    for (const auto& [growth, name] :
         {std::pair(Growth::none, "none"), {Growth::thin, "thin"}, {Growth::thick, "thick"}}) {
        EXPECT_EQ(weed::nameOf(growth), name);
        EXPECT_EQ(weed::growthNamed(name), growth);
    }
    EXPECT_FALSE(weed::growthNamed("some"));
}

} // namespace
