// SPDX-License-Identifier: GPL-3.0-or-later
// The drawing in the file: over more than one tile each way, with all that is told of it, and
// dropped rather than trusted where it is not whole.
#include "core/store/water_store.h"
#include "tests/core/store/file_rows.h"
#include "tests/support/made_up_water.h"
#include "tests/support/scratch_folder.h"

#include <cmath>

#include <gtest/gtest.h>

namespace {

using support::ScratchFolder;

base::Progress quiet;

surface::DrawReport fullReport() {
    surface::DrawReport report;
    report.cell = units::Length::metres(2.5);
    report.cells = 101;
    report.stiffness = 0.125;
    report.contourStiffness = 0.375;
    report.heldOut = surface::HeldOutError{0.25, 0.5, 301};
    report.trustCurve = surface::TrustCurve{5.0, 0.4, 0.75, 120.0, 0.1};
    report.chosenFrom = 102;
    report.chosenOver = units::Area::squareMetres(1234.5);
    report.isChoiceKept = true;
    report.soundingsUsed = 103;
    report.soundingsOutside = 104;
    report.spikes = {3, 99};
    report.passes = 5;
    report.iterations = 17;
    report.drawSeconds = 1.5;
    report.trustSeconds = 2.5;
    return report;
}

void expectSame(const surface::DrawReport& a, const surface::DrawReport& b) {
    EXPECT_EQ(a.cell, b.cell);
    EXPECT_EQ(a.cells, b.cells);
    EXPECT_EQ(a.stiffness, b.stiffness);
    EXPECT_EQ(a.contourStiffness, b.contourStiffness);
    ASSERT_EQ(a.heldOut.has_value(), b.heldOut.has_value());
    if (a.heldOut) {
        EXPECT_EQ(a.heldOut->median_m, b.heldOut->median_m);
        EXPECT_EQ(a.heldOut->mean_m, b.heldOut->mean_m);
        EXPECT_EQ(a.heldOut->soundings, b.heldOut->soundings);
    }
    EXPECT_EQ(a.trustCurve, b.trustCurve);
    EXPECT_EQ(a.chosenFrom, b.chosenFrom);
    EXPECT_EQ(a.chosenOver, b.chosenOver);
    EXPECT_EQ(a.isChoiceKept, b.isChoiceKept);
    EXPECT_EQ(a.soundingsUsed, b.soundingsUsed);
    EXPECT_EQ(a.soundingsOutside, b.soundingsOutside);
    EXPECT_EQ(a.spikes, b.spikes);
    EXPECT_EQ(a.passes, b.passes);
    EXPECT_EQ(a.iterations, b.iterations);
    EXPECT_EQ(a.drawSeconds, b.drawSeconds);
    EXPECT_EQ(a.trustSeconds, b.trustSeconds);
}

/// 260 by 520 cells: two tiles across, three down, the last ones almost empty.
class KeptDrawing : public testing::Test {
protected:
    KeptDrawing()
        : known_(support::madeUpWater(
              {{{{-128, -258}, {128, -258}, {128, 258}, {-128, 258}}, {}}},
              [](geo::WaterPoint p) { return 9.0 + 0.01 * p.x_m - 0.003 * p.y_m; }, 1.0)) {
        const grid::GridFrame& frame = known_.depth.frame();
        grid::Grid<float> halfWidth_m(frame, NAN);
        grid::Grid<surface::TrustName> names(frame, surface::TrustName::guess);
        for (std::size_t i = 0; i < frame.size(); ++i) {
            if (known_.depth.has(i)) {
                halfWidth_m[i] = 0.1F + 0.001F * static_cast<float>(i % 977);
                names[i] = static_cast<surface::TrustName>(i % 3);
            }
        }
        drawn_ = {known_.mask, known_.depth,
                  surface::TrustGrid(std::move(halfWidth_m), std::move(names)), fullReport()};
    }
    void save() {
        const auto saved = store_->saveDrawing(drawn_, known_.frame, water::Stamp(7));
        ASSERT_TRUE(saved.has_value()) << saved.error().sentence();
    }
    [[nodiscard]] std::optional<store::KeptDrawing> kept() {
        auto loaded = store_->loadDrawing(known_.outline);
        EXPECT_TRUE(loaded.has_value()) << loaded.error().sentence();
        return loaded ? std::move(*loaded) : std::nullopt;
    }

    const support::MadeUpWater known_;
    surface::DrawnWater drawn_;
    const ScratchFolder folder_;
    const std::filesystem::path path_ = folder_.path() / "water.gpkg";
    const std::unique_ptr<store::WaterStore> store_ = store::create(path_).value();
};

TEST_F(KeptDrawing, ComesBackFromAllItsTiles) {
    const grid::GridFrame& frame = drawn_.depth.frame();
    ASSERT_GT(frame.cols(), 256);
    ASSERT_GT(frame.rows(), 512);
    save();
    EXPECT_EQ(support::rowsOf(path_, "matrix_width, matrix_height",
                              "gpkg_tile_matrix WHERE table_name='depth'"),
              (std::vector<std::string>{std::to_string((frame.cols() + 255) / 256) + "|" +
                                        std::to_string((frame.rows() + 255) / 256)}));
    const auto back = kept();
    ASSERT_TRUE(back);
    EXPECT_EQ(back->stamp, water::Stamp(7));
    ASSERT_EQ(back->drawn.depth.frame(), frame);
    for (std::size_t i = 0; i < frame.size(); ++i) {
        ASSERT_EQ(back->drawn.depth.has(i), drawn_.depth.has(i)) << i;
        if (drawn_.depth.has(i)) {
            ASSERT_EQ(back->drawn.depth.raw_m()[i], drawn_.depth.raw_m()[i]) << i;
            ASSERT_EQ(back->drawn.trust.halfWidths_m()[i], drawn_.trust.halfWidths_m()[i]) << i;
        }
        ASSERT_EQ(back->drawn.trust.names()[i], drawn_.trust.names()[i]) << i;
    }
}

TEST_F(KeptDrawing, TellsAllThatWasReportedAndNothingThatWasNot) {
    save();
    auto back = kept();
    ASSERT_TRUE(back);
    expectSame(back->drawn.report, drawn_.report);
    drawn_.report.heldOut.reset();
    drawn_.report.trustCurve.reset();
    drawn_.report.isChoiceKept = false;
    save();
    back = kept();
    ASSERT_TRUE(back);
    expectSame(back->drawn.report, drawn_.report);
    // A file of an earlier version tells less.
    support::changeFile(path_, "UPDATE drawing SET report = json_remove(report, '$.chosen_from', "
                               "'$.chosen_over_m2', '$.is_choice_kept')");
    drawn_.report.chosenFrom = 0;
    drawn_.report.chosenOver = {};
    back = kept();
    ASSERT_TRUE(back);
    expectSame(back->drawn.report, drawn_.report);
}

TEST_F(KeptDrawing, IsDroppedWhereItIsNotWholeAndIsMadeAgain) {
    for (const char* damage :
         {"UPDATE drawing SET report='soon'",
          "UPDATE drawing SET report=json_remove(report, '$.passes')",
          "UPDATE drawing SET trust_names=substr(trust_names, 2)",
          "UPDATE drawing SET trust_names=CAST(x'03' || substr(trust_names, 2) AS BLOB)",
          "UPDATE drawing SET cell_m=0", "UPDATE drawing SET cell_m=-1",
          "UPDATE drawing SET rows=0", "UPDATE drawing SET cols=0",
          "UPDATE drawing SET cols=rows, rows=cols",
          "UPDATE drawing SET cols=1000000, rows=1000000", "UPDATE drawing SET west_m=west_m+40",
          "UPDATE depth SET tile_row=-1 WHERE tile_row=0 AND tile_column=0",
          "UPDATE depth SET tile_column=-1 WHERE tile_row=0 AND tile_column=0",
          "UPDATE depth SET tile_column=2 WHERE tile_column=1",
          "UPDATE depth SET tile_row=3 WHERE tile_row=2", "DELETE FROM depth WHERE tile_row=1",
          "DELETE FROM trust WHERE tile_row=1",
          "UPDATE depth SET tile_data=CAST(x'4D' || substr(tile_data, 2) AS BLOB)",
          "UPDATE depth SET tile_data=CAST(tile_data || x'00' AS BLOB)"}) {
        SCOPED_TRACE(damage);
        save();
        support::changeFile(path_, damage);
        EXPECT_FALSE(kept());
    }
    save();
    EXPECT_TRUE(kept());
}

} // namespace
