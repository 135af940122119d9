// SPDX-License-Identifier: GPL-3.0-or-later
// Depth limit of rooted plants from the Secchi depth D. Published relations; values computed apart
// from this program from the published coefficients.
//   Chambers and Kalff 1985, Can. J. Fish. Aquat. Sci. 42, 701: sqrt z = 1.33 log D + 1.40 (Quebec
//     and world), 1.14 log D + 1.32 (Quebec); second-hand, through a tool of Fisheries and Oceans
//     Canada that cites Croft-White and others 2022. That the logarithm is to base 10 is from
//     memory, and forced by the size of the result.
//   Canfield and others 1985, J. Aquat. Plant Manage. 23, 25: log z = 0.61 log D + 0.26 (from
//     memory).
//   Caffrey and others 2007 (Florida, 279 lake-years): log z = 0.66 log D + 0.31; upper envelope
//     0.53 log D + 0.59 (as later reports quote it: second-hand).
#include "core/weed/growth_limit.h"

#include <gtest/gtest.h>

namespace {

using units::Depth;
using weed::GrowthRelation;

struct Row {
    double secchi_m;
    double world_m;
    double quebec_m;
    double canfield_m;
    double caffrey_m;
    double upper_m;
};

TEST(MacrophyteReference, GrowthLimitsAgreeWithThePublishedRelations) {
    constexpr double tolerance_m = 0.0006; // the rows are rounded to a millimetre
    for (const Row& row :
         {Row{1, 1.960, 1.742, 1.820, 2.042, 3.890}, Row{2, 3.241, 2.766, 2.777, 3.226, 5.618},
          Row{3, 4.139, 3.474, 3.557, 4.216, 6.964}, Row{4, 4.843, 4.025, 4.239, 5.098, 8.111},
          Row{6, 5.929, 4.871, 5.428, 6.662, 10.056}}) {
        const Depth secchi = Depth::metres(row.secchi_m);
        const auto limit_m = [&](GrowthRelation r) {
            return weed::growthLimit(r, secchi).inMetres();
        };
        EXPECT_NEAR(limit_m(GrowthRelation::chambersKalffWorld), row.world_m, tolerance_m);
        EXPECT_NEAR(limit_m(GrowthRelation::chambersKalffQuebec), row.quebec_m, tolerance_m);
        EXPECT_NEAR(limit_m(GrowthRelation::canfield), row.canfield_m, tolerance_m);
        EXPECT_NEAR(limit_m(GrowthRelation::caffrey), row.caffrey_m, tolerance_m);
        EXPECT_NEAR(limit_m(GrowthRelation::caffreyUpper), row.upper_m, tolerance_m);
    }
}

// With the natural logarithm the first relation would give 10.5 m at 4 m: a mistake that is in use
// elsewhere.
TEST(MacrophyteReference, TheLogarithmIsToBaseTen) {
    EXPECT_LT(weed::growthLimit(GrowthRelation::chambersKalffWorld, Depth::metres(4.0)),
              Depth::metres(5.0));
}

} // namespace
