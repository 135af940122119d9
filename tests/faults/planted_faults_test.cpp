// SPDX-License-Identifier: GPL-3.0-or-later
// Faults planted into clean tracks, as many seeds as it takes to see the rules' manners. The tracks
// are those of the sample water, without its own faults, and of the bench's lakes where they are at
// hand.
#include "core/readers/read_soundings.h"
#include "core/reduction/correct_depths.h"
#include "core/reduction/set_aside_along_track.h"
#include "tests/support/planted_faults.h"
#include "tests/support/sample_faults.h"

#include <algorithm>
#include <cmath>
#include <filesystem>
#include <map>

#include <gtest/gtest.h>

namespace reduction {

namespace {

using soundings::Verdict;
using support::Planted;

/// What became of planted faults, by their kind.
struct Score {
    std::map<Planted, std::size_t> planted;
    std::map<Planted, std::size_t> found;
    std::map<Verdict, std::size_t> wrongly;

    void add(const std::vector<Planted>& truth, const ReducedDay& judged) {
        for (std::size_t i = 0; i < truth.size(); ++i) {
            if (truth[i] == Planted::unseen) {
                continue;
            }
            ++planted[truth[i]];
            if (judged.verdicts[i] != Verdict::kept) {
                ++found[truth[i]];
                if (truth[i] == Planted::nothing) {
                    ++wrongly[judged.verdicts[i]];
                }
            }
        }
    }
    void add(const Score& other) {
        for (const auto& [kind, count] : other.planted) {
            planted[kind] += count;
        }
        for (const auto& [kind, count] : other.found) {
            found[kind] += count;
        }
        for (const auto& [verdict, count] : other.wrongly) {
            wrongly[verdict] += count;
        }
    }
    [[nodiscard]] std::size_t faults() const {
        std::size_t sum = 0;
        for (const auto& [kind, count] : planted) {
            sum += kind == Planted::nothing ? 0 : count;
        }
        return sum;
    }
    [[nodiscard]] std::size_t hits() const {
        std::size_t sum = 0;
        for (const auto& [kind, count] : found) {
            sum += kind == Planted::nothing ? 0 : count;
        }
        return sum;
    }
    [[nodiscard]] std::size_t wrong() const {
        const auto at = found.find(Planted::nothing);
        return at == found.end() ? 0 : at->second;
    }
    [[nodiscard]] double precision() const {
        return static_cast<double>(hits()) / static_cast<double>(hits() + wrong());
    }
    [[nodiscard]] double recall() const {
        return static_cast<double>(hits()) / static_cast<double>(faults());
    }
    [[nodiscard]] std::string words() const {
        std::string text = " precision " + std::to_string(precision()) + " recall " +
                           std::to_string(recall()) + ":";
        for (const auto& [kind, count] : planted) {
            const auto at = found.find(kind);
            text += " " + std::string(nameOf(kind)) + " " +
                    std::to_string(at == found.end() ? 0 : at->second) + "/" +
                    std::to_string(count);
        }
        for (const auto& [verdict, count] : wrongly) {
            text += " wrongly " + std::string(nameOf(verdict)) + " " + std::to_string(count);
        }
        return text;
    }
};

/// A clean track and its name.
struct Track {
    std::string name;
    soundings::SurveyDay day;
};

geo::WaterFrame frameOf(const soundings::SurveyDay& day) {
    std::vector<geo::LonLat> places;
    for (const soundings::Sounding& sounding : day.soundings) {
        places.push_back(sounding.place);
    }
    return geo::WaterFrame::around(places).value();
}

soundings::SurveyDay dayFrom(const std::filesystem::path& file,
                             const readers::SoundingFileSettings& settings = {}) {
    base::Progress progress;
    readers::ReadSoundings read = readers::readSoundings(file, settings, progress).value();
    soundings::SurveyDay day;
    day.soundings = std::move(read.soundings);
    day.passStarts = std::move(read.passStarts);
    return day;
}

ReducedDay judged(const soundings::SurveyDay& day, const geo::WaterFrame& frame) {
    base::Progress progress;
    ReducedSurvey reduced = correctDepths({day}, frame, {}, progress).value();
    return setAsideAlongTrack({day}, std::move(reduced), {}, progress).value().days[0];
}

/// The sample water's tracks without its own faults: the third day's depths are in feet.
std::vector<Track> sampleTracks() {
    std::vector<Track> tracks;
    auto faults = support::sampleFaults();
    for (const auto& [name, file] : {std::pair("2026-09-05", "files/survey-2026-09-05.nmea"),
                                     std::pair("2026-09-12", "files/survey-2026-09-12.gpx"),
                                     std::pair("2026-09-19", "files/survey-2026-09-19.csv")}) {
        readers::SoundingFileSettings settings;
        settings.unit = std::string(name) == "2026-09-19" ? std::optional(readers::DepthUnit::feet)
                                                          : std::nullopt;
        soundings::SurveyDay day = dayFrom(support::sampleFile(file), settings);
        const auto& known = faults.at(name);
        std::erase_if(day.soundings.edit(), [&](const soundings::Sounding& sounding) {
            return known.contains(support::given(sounding.time));
        });
        day.passStarts = readers::passStartsOf(day.soundings);
        tracks.push_back({name, std::move(day)});
    }
    return tracks;
}

/// The bench's tracks as its text tables show them: without times, in tenths.
std::vector<Track> benchTracks() {
    std::vector<Track> tracks;
    const std::filesystem::path cases = MEREMARK_SHARED_DIR "/bench/cases";
    for (const char* lake : {"A", "B", "C", "D"}) {
        for (const char* way : {"-lines", "-irreg"}) {
            const auto file = cases / (std::string(lake) + way) / "soundings.csv";
            if (std::filesystem::exists(file)) {
                tracks.push_back({std::string(lake) + way, dayFrom(file)});
            }
        }
    }
    return tracks;
}

/// The same with times: one sounding a second, and longer where the table leaves a way out.
soundings::SurveyDay timed(soundings::SurveyDay day) {
    const geo::WaterFrame frame = frameOf(day);
    units::Moment now = units::momentFrom("2026-09-05T08:00:00Z", units::Clock()).value();
    geo::WaterPoint before = frame.toWater(day.soundings.front().place);
    for (soundings::Sounding& sounding : day.soundings.edit()) {
        const geo::WaterPoint at = frame.toWater(sounding.place);
        constexpr double speed_m_s = 4.0;
        now += std::chrono::seconds(
            std::max(1L, std::lround(geo::distance_m(before, at) / speed_m_s)));
        sounding.time = now;
        before = at;
    }
    return day;
}

/// The share of a clean track that is set aside.
double lostShare(const soundings::SurveyDay& day) {
    const ReducedDay result = judged(day, frameOf(day));
    const auto kept = std::ranges::count(result.verdicts, Verdict::kept);
    return 1.0 - static_cast<double>(kept) / static_cast<double>(result.verdicts.size());
}

Score scoreOf(const Track& track, const support::FaultWish& wish, std::uint32_t seed) {
    soundings::SurveyDay day = track.day;
    const geo::WaterFrame frame = frameOf(day);
    const auto truth = support::plantFaults(day, frame, wish, seed);
    Score score;
    score.add(truth, judged(day, frame));
    return score;
}

/// Over all seeds together; a single one has too few stretches of each kind to tell a rate.
void expectFound(const std::vector<Track>& tracks, std::uint32_t seeds) {
    for (const Track& track : tracks) {
        for (const double share : {0.005, 0.01, 0.03}) {
            Score all;
            for (std::uint32_t seed = 1; seed <= seeds; ++seed) {
                support::FaultWish wish;
                wish.spikeShare = share;
                const Score one = scoreOf(track, wish, seed);
                EXPECT_GE(one.precision(), 0.93) << track.name << " seed " << seed << one.words();
                EXPECT_GE(one.recall(), 0.85) << track.name << " seed " << seed << one.words();
                all.add(one);
            }
            EXPECT_GE(all.precision(), 0.97) << track.name << " spikes " << share << all.words();
            EXPECT_GE(all.recall(), 0.95) << track.name << " spikes " << share << all.words();
        }
    }
}

TEST(PlantedFaults, AreFoundOnTheSampleWater) {
    expectFound(sampleTracks(), 8);
}

TEST(PlantedFaults, TheCleanSampleWaterLosesNextToNothing) {
    for (const Track& track : sampleTracks()) {
        EXPECT_LE(lostShare(track.day), 0.003) << track.name;
    }
}

TEST(PlantedFaults, AreFoundOnTheBenchLakes) {
    const auto tracks = benchTracks();
    if (tracks.empty()) {
        GTEST_SKIP() << "the bench is not at hand";
    }
    expectFound(tracks, 4);
}

TEST(PlantedFaults, AreFoundOnTheBenchLakesWithTimes) {
    auto tracks = benchTracks();
    if (tracks.empty()) {
        GTEST_SKIP() << "the bench is not at hand";
    }
    for (Track& track : tracks) {
        track.day = timed(std::move(track.day));
    }
    expectFound(tracks, 4);
}

TEST(PlantedFaults, CleanBenchLakesLoseNextToNothing) {
    const auto tracks = benchTracks();
    if (tracks.empty()) {
        GTEST_SKIP() << "the bench is not at hand";
    }
    for (const Track& track : tracks) {
        EXPECT_LE(lostShare(track.day), 0.003) << track.name;
        EXPECT_LE(lostShare(timed(track.day)), 0.003) << track.name << " with times";
    }
}

} // namespace

} // namespace reduction
