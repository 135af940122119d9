// SPDX-License-Identifier: GPL-3.0-or-later
// Seasons of fishing by the plan on drawn waters whose fish follow a rule that it does not know,
// held against one who knows all, always the best so far, and chance:
//   bench_learning [--seeds N] [--worlds W1,W2] [--out FILE.json] WATER.gpkg...
#include "core/store/water_store.h"
#include "core/water/steps/derive.h"
#include "tests/bench/learning/season.h"

#include <cmath>
#include <fstream>
#include <memory>
#include <sstream>

#include <fmt/format.h>
#include <nlohmann/json.hpp>

namespace {

using namespace learning_bench;
using Json = nlohmann::ordered_json;

constexpr int trips = 60;
constexpr int blocks = 3;

struct Options {
    std::uint32_t seeds = 2;
    std::vector<std::string> worlds{"W1", "W2", "W3", "W4", "W5a", "W5b", "W6"};
    std::string out;
    std::vector<std::string> waters;
};

struct Drawn {
    water::Water water;
    water::Derived derived;
};

base::Result<std::unique_ptr<Drawn>> drawn(const std::string& file) {
    auto store = store::open(file);
    if (!store) {
        return std::unexpected(store.error());
    }
    base::Progress quiet;
    auto drawn = std::make_unique<Drawn>();
    auto water = (*store)->load(quiet);
    if (!water) {
        return std::unexpected(water.error());
    }
    drawn->water = std::move(*water);
    auto derived = water::derive(drawn->water, {}, water::Step::sections, quiet);
    if (!derived) {
        return std::unexpected(derived.error());
    }
    drawn->derived = std::move(*derived);
    return drawn;
}

/// Sums over the seasons of one world by one angler.
struct Sums {
    std::array<double, blocks> share{};
    std::array<double, blocks> expected{};
    std::array<double, blocks> truth{};
    std::array<int, blocks> held{};
    std::array<int, blocks> said{};
    std::vector<double> each;
    int seasons = 0;
    double planSeconds = 0.0;

    void take(const Season& season) {
        double whole = 0.0;
        for (std::size_t t = 0; t < season.trips.size(); ++t) {
            const std::size_t b = t * blocks / trips;
            const Trip& trip = season.trips[t];
            share[b] += trip.take / trip.oracle * blocks / trips;
            whole += trip.take / trip.oracle / trips;
            for (const Said& one : trip.said) {
                expected[b] += one.expected;
                truth[b] += one.truth;
                ++said[b];
                held[b] += one.truth >= one.low && one.truth <= one.high ? 1 : 0;
            }
        }
        each.push_back(whole);
        ++seasons;
        planSeconds += season.planSeconds;
    }

    [[nodiscard]] double standardError() const {
        double mean = 0.0;
        double squares = 0.0;
        for (const double x : each) {
            mean += x / static_cast<double>(each.size());
        }
        for (const double x : each) {
            squares += (x - mean) * (x - mean);
        }
        const auto n = static_cast<double>(each.size());
        return n > 1 ? std::sqrt(squares / (n - 1.0) / n) : 0.0;
    }

    [[nodiscard]] Json json() const {
        Json out{{"seasons", seasons}, {"standard_error", standardError()}};
        for (std::size_t b = 0; b < blocks; ++b) {
            out["share"].push_back(share[b] / seasons);
            if (said[b] > 0) {
                out["promised_over_true"].push_back(expected[b] / truth[b]);
                out["interval_held"].push_back(static_cast<double>(held[b]) / said[b]);
            }
        }
        out["cpu_s_a_plan"] = planSeconds / (seasons * trips);
        return out;
    }
};

std::string threeOf(const Json& numbers) {
    return numbers.is_null()
               ? std::string("-")
               : fmt::format("{:.2f}/{:.2f}/{:.2f}", numbers.at(0).get<double>(),
                             numbers.at(1).get<double>(), numbers.at(2).get<double>());
}

std::vector<std::string> split(const std::string& text) {
    std::vector<std::string> parts;
    std::istringstream in(text);
    for (std::string part; std::getline(in, part, ',');) {
        parts.push_back(part);
    }
    return parts;
}

Options optionsFrom(int argc, char** argv) {
    Options options;
    for (int k = 1; k < argc; ++k) {
        const std::string word = argv[k];
        const std::string next = k + 1 < argc ? argv[k + 1] : "";
        if (word == "--seeds") {
            options.seeds = static_cast<std::uint32_t>(std::stoul(next));
        } else if (word == "--worlds") {
            options.worlds = split(next);
        } else if (word == "--out") {
            options.out = next;
        } else {
            options.waters.push_back(word);
            continue;
        }
        ++k;
    }
    return options;
}

Json runWorld(const std::string& name, const std::vector<std::unique_ptr<TruthWater>>& waters,
              std::uint32_t seeds) {
    Json out;
    const std::vector<std::pair<Angler, const char*>> anglers{
        {Angler::plan, "plan"}, {Angler::bestSoFar, "best so far"}, {Angler::random, "random"}};
    for (const auto& [angler, who] : anglers) {
        Sums sums;
        for (const auto& water : waters) {
            for (std::uint32_t seed = 0; seed < seeds; ++seed) {
                const World world(*water, name, seed, trips);
                const Season season = fish(*water, world, angler, seed, trips);
                if (!season.failure.empty()) {
                    fmt::print(stderr, "{} seed {}: {}\n", name, seed, season.failure);
                    continue;
                }
                sums.take(season);
            }
        }
        if (sums.seasons > 0) {
            out[who] = sums.json();
        }
    }
    return out;
}

int run(const Options& options) {
    std::vector<std::unique_ptr<Drawn>> all;
    std::vector<std::unique_ptr<TruthWater>> waters;
    for (const std::string& file : options.waters) {
        auto one = drawn(file);
        if (!one) {
            fmt::print(stderr, "{}\n", one.error().sentence());
            return 1;
        }
        all.push_back(std::move(*one));
        waters.push_back(std::make_unique<TruthWater>(all.back()->water, all.back()->derived));
        fmt::print("{}: {} places, {} sections\n", file, waters.back()->places().size(),
                   waters.back()->sections());
    }
    fmt::print("{:4} {:>5} {:>17} {:>17} {:>17} {:>17} {:>17} {:>7}\n", "", "se", "plan",
               "best so far", "random", "promised/true", "80 % held", "s/plan");
    Json report;
    for (const std::string& name : options.worlds) {
        const Json world = runWorld(name, waters, options.seeds);
        const Json& plan = world.value("plan", Json::object());
        fmt::print("{:4} {:5.2f} {:>17} {:>17} {:>17} {:>17} {:>17} {:7.3f}\n", name,
                   plan.value("standard_error", 0.0), threeOf(plan.value("share", Json())),
                   threeOf(world["best so far"]["share"]), threeOf(world["random"]["share"]),
                   threeOf(plan.value("promised_over_true", Json())),
                   threeOf(plan.value("interval_held", Json())), plan.value("cpu_s_a_plan", 0.0));
        std::fflush(stdout);
        report[name] = world;
    }
    if (!options.out.empty()) {
        std::ofstream(options.out) << report.dump(2) << '\n';
    }
    return 0;
}

} // namespace

int main(int argc, char** argv) {
    const Options options = optionsFrom(argc, argv);
    if (options.waters.empty() || options.seeds == 0) {
        std::fputs("usage: bench_learning [--seeds N] [--worlds W1,W2] [--out FILE.json] "
                   "WATER.gpkg...\n",
                   stderr);
        return 2;
    }
    return run(options);
}
