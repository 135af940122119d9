// SPDX-License-Identifier: GPL-3.0-or-later
// The sample's own files with a few bytes or numbers changed, as a bad cable, a broken export or
// somebody's malice would: every reader gives what it can, or says where it stumbled and what to
// do.
#include "core/readers/read_house_rules.h"
#include "core/readers/read_lead_line.h"
#include "core/readers/read_log.h"
#include "core/readers/read_shoreline.h"
#include "core/readers/read_soundings.h"
#include "core/readers/read_track.h"
#include "core/readers/read_water_facts.h"
#include "core/readers/read_weed_notes.h"
#include "tests/support/sample_faults.h"
#include "tests/support/scratch_folder.h"

#include <array>
#include <functional>
#include <optional>
#include <random>

#include <gtest/gtest.h>

namespace {

using support::sampleFile;
using support::ScratchFolder;

base::Progress quiet;

/// The beginning of a long file is enough.
constexpr std::size_t mostBytes = 40'000;

class Mutants {
public:
    explicit Mutants(std::uint64_t seed) : random_(seed) {}

    [[nodiscard]] std::string of(std::string text) {
        static const std::array<std::string, 14> words{
            "-1", "1e308", "nan", "2e16", "\"", "\n",       std::string(1, '\0'),
            "{",  "]",     "<",   ",",    ";",  "\xff\xfe", "9999999999999999999"};
        for (std::size_t change = 0, count = 1 + upTo(8); change < count && !text.empty();
             ++change) {
            const std::size_t at = upTo(text.size() - 1);
            switch (upTo(4)) {
            case 0:
                text[at] = static_cast<char>(upTo(255));
                break;
            case 1:
                text.erase(at, 1 + upTo(40));
                break;
            case 2:
                text.insert(at, words.at(upTo(words.size() - 1)));
                break;
            case 3:
                text.insert(at, text.substr(upTo(text.size() - 1), 300));
                break;
            default:
                changeNumber(text, at);
            }
        }
        return text;
    }

private:
    [[nodiscard]] std::size_t upTo(std::size_t most) { return random_() % (most + 1); }
    void changeNumber(std::string& text, std::size_t from) {
        const std::size_t first = text.find_first_of("0123456789", from);
        if (first != std::string::npos) {
            const std::size_t end =
                std::min(text.find_first_not_of("0123456789.", first), text.size());
            static const std::array<const char*, 7> numbers{"0",    "-0",    "1e9", "181",
                                                            "91.5", "1e400", ""};
            text.replace(first, end - first, numbers.at(upTo(numbers.size() - 1)));
        }
    }
    std::mt19937_64 random_;
};

/// What a reader said of a file; nothing where it gave something.
using Read = std::function<std::optional<base::Error>(const std::filesystem::path&)>;

template <class T>
std::optional<base::Error> refusalOf(const base::Result<T>& read) {
    return read ? std::nullopt : std::optional(read.error());
}

struct Input {
    const char* file;
    Read read;
};

const std::array<Input, 11> inputs{{
    {"survey-2026-09-05.nmea",
     [](const auto& path) { return refusalOf(readers::readSoundings(path, {}, quiet)); }},
    {"survey-2026-09-12.gpx",
     [](const auto& path) { return refusalOf(readers::readSoundings(path, {}, quiet)); }},
    {"survey-2026-09-19.csv",
     [](const auto& path) { return refusalOf(readers::readSoundings(path, {}, quiet)); }},
    {"shoreline.geojson",
     [](const auto& path) { return refusalOf(readers::readShoreline(path, std::nullopt, quiet)); }},
    {"water.json", [](const auto& path) { return refusalOf(readers::readWaterFacts(path)); }},
    {"house-rules.json", [](const auto& path) { return refusalOf(readers::readHouseRules(path)); }},
    {"weed-notes.csv",
     [](const auto& path) { return refusalOf(readers::readWeedNotes(path, quiet)); }},
    {"lead-line.csv",
     [](const auto& path) { return refusalOf(readers::readLeadLine(path, quiet)); }},
    {"survey-days.csv",
     [](const auto& path) { return refusalOf(readers::readSurveyDayFacts(path)); }},
    {"log.csv",
     [](const auto& path) { return refusalOf(readers::readLog(path, units::Clock(), quiet)); }},
    {"day-track.gpx", [](const auto& path) { return refusalOf(readers::readTrack(path, quiet)); }},
}};

TEST(MutantsOfTheSample, AreReadOrRefusedWithTheirPlace) {
    constexpr std::uint64_t each = 40;
    for (const Input& input : inputs) {
        const std::string whole =
            ScratchFolder::textOf(sampleFile("files/" + std::string(input.file)))
                .substr(0, mostBytes);
        ASSERT_FALSE(whole.empty()) << input.file;
        const ScratchFolder folder;
        std::size_t refused = 0;
        for (std::uint64_t seed = 1; seed <= each; ++seed) {
            SCOPED_TRACE(input.file + (", seed " + std::to_string(seed)));
            const auto path = folder.file(input.file, Mutants(seed).of(whole));
            const auto refusal = input.read(path);
            if (refusal) {
                ++refused;
                EXPECT_EQ(refusal->kind, base::ErrorKind::unusableInput) << refusal->sentence();
                EXPECT_NE(refusal->where.find(input.file), std::string::npos)
                    << refusal->sentence();
                EXPECT_FALSE(refusal->whatToDo.empty()) << refusal->sentence();
            }
        }
        RecordProperty(input.file, static_cast<int>(refused));
    }
}

} // namespace
