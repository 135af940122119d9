// SPDX-License-Identifier: GPL-3.0-or-later
// Real soundings from open data (each folder's SOURCE.md names who recorded them and their
// licence): what is set aside of them, looked at one by one when the counts were written down.
#include "core/readers/read_soundings.h"
#include "core/reduction/correct_depths.h"
#include "core/reduction/set_aside_along_track.h"
#include "core/reduction/set_aside_disagreeing.h"

#include <filesystem>
#include <ostream>

#include <gtest/gtest.h>

namespace reduction {

namespace {

struct OpenTrack {
    const char* name;
    std::size_t kept;
    std::map<std::string, std::size_t> setAside;
};

void PrintTo(const OpenTrack& track, std::ostream* out) {
    *out << track.name;
}

class OpenTracks : public testing::TestWithParam<OpenTrack> {};

TEST_P(OpenTracks, LoseTheirFaultsAndKeepTheRest) {
    const auto path = std::filesystem::path(MEREMARK_SHARED_DIR) / "data" / GetParam().name;
    if (!std::filesystem::exists(path)) {
        GTEST_SKIP() << "no open data at " << path;
    }
    base::Progress progress;
    readers::ReadSoundings read = readers::readSoundings(path, {}, progress).value();
    soundings::SurveyDay day;
    day.soundings = std::move(read.soundings);
    day.passStarts = std::move(read.passStarts);
    std::vector<geo::LonLat> places;
    for (const soundings::Sounding& sounding : day.soundings) {
        places.push_back(sounding.place);
    }
    const geo::WaterFrame frame = geo::WaterFrame::around(places).value();
    ReducedSurvey survey = correctDepths({day}, frame, {}, progress).value();
    survey = setAsideAlongTrack({day}, std::move(survey), {}, progress).value();
    survey = setAsideDisagreeing({day}, std::move(survey), {}, progress).value();
    EXPECT_EQ(survey.keptCount(), GetParam().kept);
    EXPECT_EQ(survey.setAsideCounts(), GetParam().setAside);
}

INSTANTIATE_TEST_SUITE_P(
    All, OpenTracks,
    testing::Values(
        OpenTrack{"caputh_de/soundings_2025-01-17.csv", 2830, {{"spike", 2}}},
        OpenTrack{"caputh_de/soundings_2025-01-22.csv", 12215, {{"spike", 9}}},
        OpenTrack{"caputh_de/soundings_2025-01-23.csv", 8540, {{"spike", 1}}},
        OpenTrack{"caputh_de/soundings_2025-01-30.csv", 7384, {{"spike", 2}}},
        // Its first six rows lie 4 km away (SOURCE.md).
        OpenTrack{"ela227/soundings.csv", 1032, {{"position_jump", 6}, {"spike", 1}}},
        // Zeros, spikes to 32 m and false echoes at twice the depth (SOURCE.md).
        OpenTrack{"harbour_public_domain/soundings.csv",
                  3423,
                  {{"double_echo", 29}, {"drop_out", 99}, {"spike", 14}, {"stuck_depth", 100}}},
        OpenTrack{"nmea_logs/moored_gga_rmc_dbt_dpt_mtw_ais.nmea", 142, {}},
        OpenTrack{"nmea_logs/underway_gll_zda_dbt.nmea", 1200, {}},
        OpenTrack{"pensacola_bay/soundings.csv", 2429, {{"drop_out", 11}}},
        // Echoes from under the hull over 120 m of water, and of 6 m between 0.6 m.
        OpenTrack{"b12_csb/11f79484.geojson", 926, {{"spike", 49}}},
        OpenTrack{"b12_csb/650436ee.geojson", 1231, {}},
        OpenTrack{"b12_csb/da599ce9.geojson", 1268, {}}));

} // namespace

} // namespace reduction
