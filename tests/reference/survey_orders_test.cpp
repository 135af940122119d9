// SPDX-License-Identifier: GPL-3.0-or-later
// IHO S-44 Edition 6.1.0 (October 2022), Table 1: largest vertical uncertainty, 95 %, in metres.
#include "core/reduction/crossing_check.h"

#include <gtest/gtest.h>

namespace reduction {

namespace {

struct Row {
    double depth_m;
    double order1b_m;
    double order2_m;
};

class S44 : public testing::TestWithParam<Row> {};

TEST_P(S44, GivesTheLargestUncertainty) {
    const Row row = GetParam();
    EXPECT_NEAR(order1b_m(row.depth_m), row.order1b_m, 5e-5);
    EXPECT_NEAR(order2_m(row.depth_m), row.order2_m, 5e-5);
}

INSTANTIATE_TEST_SUITE_P(Table1, S44,
                         testing::Values(Row{2, 0.5007, 1.0011}, Row{5, 0.5042, 1.0066},
                                         Row{10, 0.5166, 1.0261}, Row{20, 0.5636, 1.1007},
                                         Row{40, 0.7214, 1.3588}));

} // namespace

} // namespace reduction
