// SPDX-License-Identifier: GPL-3.0-or-later
// What was found is never read back by the program: only a GIS would see what is wrong with it.
#include "core/store/geometry_blob.h"
#include "core/store/statement.h"
#include "core/store/water_store.h"
#include "tests/core/store/file_rows.h"
#include "tests/support/found_water.h"
#include "tests/support/scratch_folder.h"

#include <algorithm>

#include <gtest/gtest.h>

namespace {

using support::rowsOf;
using support::ScratchFolder;
using Rows = std::vector<std::string>;

base::Progress quiet;

/// Figures that no two columns share.
void tellApart(water::Derived& found, marks::Mark& mark) {
    structure::ZoneMap zones = *found.structure;
    zones.zones[0].shallowest = units::Depth::metres(4.25);
    zones.zones[0].deepest = units::Depth::metres(7.5);
    found.structure = std::make_shared<const structure::ZoneMap>(zones);
    sections::SectionMap map = *found.sections;
    sections::Section& section = map.sections[0];
    section.meanDepth = units::Depth::metres(6.25);
    section.maxDepth = units::Depth::metres(7.75);
    section.shore = units::Length::metres(350.5);
    section.weedShare = 0.125;
    section.dropOff = units::Length::metres(58.5);
    found.sections = std::make_shared<const sections::SectionMap>(map);
    mark.depth = units::Depth::metres(6.625);
    mark.trust = units::Depth::metres(0.375);
    mark.score = 0.6875;
    mark.fetch = units::Length::metres(420.5);
    mark.waveHeight = units::Length::metres(0.0625);
    mark.factors = {{marks::FactorKind::dropOff, 0.75, 1.0, {}},
                    {marks::FactorKind::depth, 0.5, 1.0, {}}};
}

class FoundColumns : public testing::Test {
protected:
    void SetUp() override {
        tellApart(known_.found, known_.marks[0]);
        ASSERT_TRUE(store_->save(known_.water, water::allParts, quiet).has_value());
    }
    [[nodiscard]] bool isSaved(const water::Derived& found) {
        const auto saved =
            store_->saveFound(known_.water, found,
                              {known_.marks,
                               [](const std::vector<marks::Factor>& factors) {
                                   return std::to_string(factors.size()) + " reasons";
                               }},
                              quiet);
        EXPECT_TRUE(saved.has_value()) << saved.error().sentence();
        return saved.has_value();
    }
    [[nodiscard]] Rows rows(std::string_view columns, std::string_view from) const {
        return rowsOf(path_, columns, from);
    }
    [[nodiscard]] std::vector<geo::LonLatPiece> onEarth(const std::vector<geo::Piece>& pieces) {
        std::vector<geo::LonLatPiece> made;
        for (const geo::Piece& piece : pieces) {
            made.push_back(geo::toEarth(piece, known_.made.frame));
        }
        return made;
    }
    /// The geometries of a layer of polygons, in their order.
    [[nodiscard]] std::vector<std::vector<geo::LonLatPiece>> piecesIn(const std::string& layer) {
        auto opened = store::Connection::open(path_, store::Connection::Access::existing).value();
        store::Statement rows(*opened, "SELECT geom FROM " + layer + " ORDER BY fid");
        std::vector<std::vector<geo::LonLatPiece>> all;
        rows.ask();
        while (rows.next()) {
            all.push_back(store::piecesFrom(rows.blob(0)).value());
        }
        return all;
    }
    /// With the verdict of one sounding changed.
    [[nodiscard]] water::Derived reducedOtherwise(std::size_t i, soundings::Verdict verdict,
                                                  double depth_m) const {
        water::CheckedSurvey checked = *known_.found.checked;
        checked.survey.days[0].verdicts[i] = verdict;
        checked.survey.days[0].depth_m[i] = depth_m;
        water::Derived found = known_.found;
        found.checked = std::make_shared<const water::CheckedSurvey>(std::move(checked));
        return found;
    }

    support::FoundWater known_;
    const ScratchFolder folder_;
    const std::filesystem::path path_ = folder_.path() / "water.gpkg";
    const std::unique_ptr<store::WaterStore> store_ = store::create(path_).value();
};

TEST_F(FoundColumns, HoldEachFigureUnderItsName) {
    ASSERT_TRUE(isSaved(known_.found));
    EXPECT_EQ(rows("depth_m", "contours ORDER BY fid"), (Rows{"6.0", "4.5"}));
    EXPECT_EQ(rows("from_m, to_m", "bands ORDER BY fid"), (Rows{"0.0|6.0", "6.0|NULL"}));
    EXPECT_EQ(rows("kind, name, area_m2, shallowest_m, deepest_m", "zones ORDER BY fid"),
              (Rows{"'drop-off'|'Drop-off 1'|10000.0|4.25|7.5",
                    "'weed bed'|'Weed bed 1'|10000.0|4.0|7.5"}));
    EXPECT_EQ(rows("name, area_m2, mean_depth_m, max_depth_m, shoreline_m, weed_share, drop_off_m",
                   "sections"),
              (Rows{"'Heron Bay'|50000.0|6.25|7.75|350.5|0.125|58.5"}));
    EXPECT_EQ(
        rows("rank, depth_m, trust_m, section, score, fetch_m, wave_height_m, reasons", "marks"),
        (Rows{"1|6.625|0.375|'Heron Bay'|0.6875|420.5|0.0625|'2 reasons'"}));
}

TEST_F(FoundColumns, HoldNoWavesOfAWindThatNobodySaid) {
    known_.marks[0].fetch.reset();
    known_.marks[0].waveHeight.reset();
    ASSERT_TRUE(isSaved(known_.found));
    EXPECT_EQ(rows("rank, fetch_m, wave_height_m, section", "marks"),
              (Rows{"1|NULL|NULL|'Heron Bay'"}));
}

TEST_F(FoundColumns, HoldEachGeometryOnTheEarth) {
    ASSERT_TRUE(isSaved(known_.found));
    const auto& form = *known_.found.form;
    EXPECT_EQ(piecesIn("bands"), (std::vector{onEarth(form.bandPolygons[0].pieces),
                                              onEarth(form.bandPolygons[1].pieces)}));
    EXPECT_EQ(piecesIn("zones"), (std::vector{onEarth(known_.found.structure->zones[0].pieces),
                                              onEarth(known_.found.weed->zones.zones[0].pieces)}));
    EXPECT_EQ(piecesIn("sections"), (std::vector<std::vector<geo::LonLatPiece>>{
                                        onEarth(known_.found.sections->sections[0].pieces)}));
    auto opened = store::Connection::open(path_, store::Connection::Access::existing).value();
    store::Statement mark(*opened, "SELECT geom FROM marks");
    mark.ask();
    ASSERT_TRUE(mark.next());
    EXPECT_EQ(store::pointFrom(mark.blob(0)), known_.marks[0].lonLat);
    store::Statement lines(*opened, "SELECT geom FROM contours ORDER BY fid");
    lines.ask();
    for (const contours::Contour& contour : form.contours) {
        ASSERT_TRUE(lines.next());
        const auto line = known_.made.frame.toEarth(std::span(contour.line));
        EXPECT_TRUE(std::ranges::equal(lines.blob(0), store::blobOf(std::span(line))));
    }
}

TEST_F(FoundColumns, AreEmptiedWhereNothingIsFoundAnyMore) {
    ASSERT_TRUE(isSaved(known_.found));
    known_.marks.clear();
    ASSERT_TRUE(isSaved({}));
    for (const char* layer : {"contours", "bands", "zones", "sections", "marks"}) {
        EXPECT_EQ(rows("count(*)", layer), (Rows{"0"})) << layer;
    }
}

TEST_F(FoundColumns, TellOfEachSoundingItsReducedDepthAndWhyItIsSetAside) {
    ASSERT_TRUE(isSaved(reducedOtherwise(11, soundings::Verdict::dropOut, std::nan(""))));
    const auto set = [&](const char* from) {
        return rows("fid, set_aside", std::string("soundings WHERE ") + from + " ORDER BY fid");
    };
    EXPECT_EQ(set("set_aside NOT NULL"), (Rows{"8|'by_hand'", "9|'spike'", "12|'drop_out'"}));
    EXPECT_EQ(set("reduced_depth_m IS NULL"), (Rows{"12|'drop_out'"}));
    EXPECT_EQ(
        rows("count(*)", "soundings WHERE abs(reduced_depth_m - shown_depth_m - 0.25) < 1e-9"),
        (Rows{"199"}));
}

TEST_F(FoundColumns, FollowAReductionThatHasChangedByOneVerdictOrOneDepth) {
    ASSERT_TRUE(isSaved(known_.found));
    ASSERT_TRUE(isSaved(reducedOtherwise(20, soundings::Verdict::stuckDepth, 5.5)));
    EXPECT_EQ(rows("reduced_depth_m, set_aside", "soundings WHERE fid = 21"),
              (Rows{"5.5|'stuck_depth'"}));
    ASSERT_TRUE(isSaved(reducedOtherwise(20, soundings::Verdict::kept, 5.5)));
    EXPECT_EQ(rows("reduced_depth_m, set_aside", "soundings WHERE fid = 21"), (Rows{"5.5|NULL"}));
    ASSERT_TRUE(isSaved(reducedOtherwise(20, soundings::Verdict::kept, 5.75)));
    EXPECT_EQ(rows("reduced_depth_m", "soundings WHERE fid = 21"), (Rows{"5.75"}));
}

TEST_F(FoundColumns, GoWithTheSoundingsThatTheyWereReducedFrom) {
    const auto reduced = [&] {
        return rows("count(*)", "soundings WHERE reduced_depth_m NOT NULL");
    };
    ASSERT_TRUE(isSaved(known_.found));
    // The day as it was: its rows stay, and with them what was reduced.
    const Rows before = rows("fid", "soundings ORDER BY fid");
    known_.water.days[0].name = "renamed";
    ASSERT_TRUE(store_->save(known_.water, water::allParts, quiet).has_value());
    EXPECT_EQ(rows("fid", "soundings ORDER BY fid"), before);
    EXPECT_EQ(reduced(), (Rows{"200"}));
    EXPECT_EQ(rows("count(reduction_stamp)", "survey_days"), (Rows{"1"}));
    // One sounding otherwise: nothing is known of its depth below chart level any more.
    known_.water.days[0].soundings.edit()[3].shown = units::Depth::metres(1.0);
    ASSERT_TRUE(store_->save(known_.water, water::allParts, quiet).has_value());
    EXPECT_EQ(reduced(), (Rows{"0"}));
    EXPECT_EQ(rows("count(reduction_stamp)", "survey_days"), (Rows{"0"}));
    ASSERT_TRUE(isSaved(known_.found));
    EXPECT_EQ(reduced(), (Rows{"200"}));
    // Reduced from another number of soundings: that is of no use to these.
    known_.water.days[0].soundings.edit().pop_back();
    known_.water.days[0].passStarts = {0};
    ASSERT_TRUE(store_->save(known_.water, water::allParts, quiet).has_value());
    ASSERT_TRUE(isSaved(known_.found));
    EXPECT_EQ(reduced(), (Rows{"0"}));
}

TEST_F(FoundColumns, OfAWholeSaveHoldAReductionOnlyWhereItFits) {
    for (const bool fits : {true, false}) {
        support::FoundWater fresh;
        if (!fits) {
            fresh.water.days[0].soundings.edit().pop_back();
        }
        const auto path = folder_.path() / (fits ? "fits.gpkg" : "other.gpkg");
        auto store = store::create(path).value();
        ASSERT_TRUE(store->saveWhole(fresh.water, fresh.found, fresh.told(), quiet).has_value());
        EXPECT_EQ(rowsOf(path, "count(reduced_depth_m), count(set_aside)", "soundings"),
                  (Rows{fits ? "200|2" : "0|0"}));
        EXPECT_EQ(rowsOf(path, "count(reduction_stamp)", "survey_days"), (Rows{fits ? "1" : "0"}));
        EXPECT_EQ(rowsOf(path, "stamp", "drawing"), (Rows{"42"}));
        EXPECT_EQ(rowsOf(path, "count(*)", "marks"), (Rows{"1"}));
        EXPECT_TRUE(store->load(quiet).value() == fresh.water);
    }
}

} // namespace
