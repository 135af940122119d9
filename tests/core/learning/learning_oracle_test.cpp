// SPDX-License-Identifier: GPL-3.0-or-later
// A small season fitted by another program, in another language, by the same equations: see
// ../shared/bench/learning (README.md, oracle.json).
#include "core/learning/fit_catch.h"

#include <filesystem>
#include <fstream>
#include <map>

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace {

using Json = nlohmann::json;
using learning::Group;

const std::map<std::string, Group> groupNamed{{"kindat", Group::kindAt},
                                              {"kind", Group::kindsNear},
                                              {"depth", Group::depth},
                                              {"wind", Group::wind},
                                              {"dt", Group::depthByTemperature},
                                              {"section", Group::section},
                                              {"drift", Group::sectionBySeason},
                                              {"g120", Group::place},
                                              {"hour", Group::hour}};

learning::Features featuresOf(const Json& rows, std::size_t row) {
    learning::Features features;
    for (const auto& [name, group] : groupNamed) {
        for (const Json& entry : rows.at(name).at(row)) {
            features.push_back({group, entry.at(0).get<std::int64_t>(), entry.at(1).get<double>()});
        }
    }
    return features;
}

class OtherProgramsSeason : public testing::Test {
protected:
    void SetUp() override {
        const auto path = std::filesystem::path(MEREMARK_SHARED_DIR) / "bench/learning/oracle.json";
        if (!std::filesystem::exists(path)) {
            GTEST_SKIP() << "needs " << path;
        }
        season = Json::parse(std::ifstream(path));
        for (std::size_t i = 0; i < season.at("fish").size(); ++i) {
            stays.push_back({featuresOf(season.at("stays"), i),
                             season.at("effort_rod_hours").at(i).get<double>(),
                             season.at("fish").at(i).get<int>(),
                             season.at("day").at(i).get<int>()});
        }
    }

    void expectSame(const learning::FitSettings& settings, const char* result) const {
        base::Progress progress;
        const auto model = learning::fitCatch(stays, settings, progress).value().model();
        const Json& told = season.at("results").at(result);
        for (std::size_t k = 0; k < told.at("log_rate_mean").size(); ++k) {
            const auto here = model.expect(featuresOf(season.at("places"), k));
            EXPECT_NEAR(here.logMean, told.at("log_rate_mean").at(k).get<double>(), 1e-6) << k;
            EXPECT_NEAR(here.variance, told.at("log_rate_variance").at(k).get<double>(), 1e-6) << k;
        }
        ASSERT_EQ(model.weights().size(), told.at("theta").size());
        for (const auto& [name, group] : groupNamed) {
            EXPECT_NEAR(model.sizes().of(group), told.at("s").at(name).get<double>(), 1e-6) << name;
        }
    }

    Json season;
    std::vector<learning::Observation> stays;
};

TEST_F(OtherProgramsSeason, IsFittedAlikeWithSizesHeld) {
    learning::FitSettings settings;
    settings.renewals = 0;
    expectSame(settings, "s fixed");
}

TEST_F(OtherProgramsSeason, IsFittedAlikeWithSizesRenewedFourTimes) {
    learning::FitSettings settings;
    settings.renewals = 4;
    settings.renewDay = false; // The other program holds the size of a day's luck.
    expectSame(settings, "s renewed four times");
}

} // namespace
