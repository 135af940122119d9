// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/rescue.h"

#include "core/base/whole_file.h"
#include "core/store/keep_parts.h"
#include "core/store/salvage.h"
#include "core/store/schema/steps.h"
#include "core/store/spatial_functions.h"
#include "core/store/water_store.h"
#include "core/store/write_water.h"

#include <algorithm>
#include <map>
#include <utility>

#include <fmt/format.h>

namespace store {

namespace fs = std::filesystem;
using base::Result;

namespace {

/// A file beside the new one that is gone when this goes, with what the database laid beside it.
class Scratch {
public:
    explicit Scratch(const fs::path& wanted) : file_(wanted) {}
    ~Scratch() {
        std::error_code ignored;
        fs::remove(journal(), ignored);
    }
    Scratch(const Scratch&) = delete;
    Scratch& operator=(const Scratch&) = delete;
    Scratch(Scratch&&) = delete;
    Scratch& operator=(Scratch&&) = delete;
    [[nodiscard]] const fs::path& path() const { return file_.beside(); }
    [[nodiscard]] fs::path journal() const { return path().string() + "-journal"; }

private:
    base::PendingFile file_;
};

/// The damaged file and the journal that a broken-off save left beside it.
Result<void> copyAsItIs(const fs::path& damaged, const Scratch& to) {
    std::error_code fault;
    if (!fs::is_regular_file(damaged, fault)) {
        return base::fail(base::ErrorKind::unusableInput, "there is no such water file",
                          damaged.string(), "check the name");
    }
    fs::copy_file(damaged, to.path(), fault);
    if (fault) {
        return base::fail(base::ErrorKind::unwritableOutput, "what is read cannot be laid aside",
                          to.path().parent_path().string(), "make room, or choose another folder");
    }
    fs::copy_file(damaged.string() + "-journal", to.journal(), fault);
    return {};
}

/// The step of the file, as far as that can be told; the newest of those that we know otherwise.
std::size_t stepToRead(Connection& from) {
    const auto step = schema::stepOf(from);
    const bool isTold = from.outcome().has_value() && step && *step <= schema::newestStep();
    return static_cast<std::size_t>(isTold ? *step : schema::newestStep());
}

/// Sentences, each with how often it was said.
class Losses {
public:
    void add(std::string sentence, std::size_t times = 1) {
        const auto known = std::ranges::find(said_, sentence, &Said::first);
        if (known != said_.end()) {
            known->second += times;
        } else if (said_.size() < mostSentences) {
            said_.emplace_back(std::move(sentence), times);
        } else {
            more_ += times;
        }
    }
    [[nodiscard]] std::vector<std::string> sentences() const {
        std::vector<std::string> sentences;
        for (const auto& [sentence, times] : said_) {
            sentences.push_back(
                times == 1 ? sentence : fmt::format("{}, and so {} times in all", sentence, times));
        }
        if (more_ > 0) {
            sentences.push_back(fmt::format("{} more like these", more_));
        }
        return sentences;
    }

private:
    using Said = std::pair<std::string, std::size_t>;
    static constexpr std::size_t mostSentences = 40;
    std::vector<Said> said_;
    std::size_t more_ = 0;
};

void tell(const SalvagedTable& table, Losses& losses) {
    if (table.isLost) {
        losses.add(fmt::format("the table {} is not to be found", table.name));
    }
    if (table.gaps > 0) {
        losses.add(fmt::format("of the table {} only {} rows can be read, the others lie in pages "
                               "that are destroyed",
                               table.name, table.rows));
    }
    if (table.refused > 0) {
        losses.add(fmt::format("a row of the table {} holds what it cannot hold", table.name),
                   table.refused);
    }
}

/// All rows that can be reached, in tables of the newest step that nothing is the matter with but
/// what they hold.
Result<std::unique_ptr<Connection>> salvaged(const Scratch& from, const Scratch& to, Losses& losses,
                                             base::Progress& progress) {
    auto source = Connection::open(from.path(), Connection::Access::existing);
    if (!source) {
        return std::unexpected(source.error());
    }
    (*source)->readInSpiteOfDamage();
    const std::size_t step = stepToRead(**source);
    auto target = Connection::open(to.path(), Connection::Access::create);
    if (!target) {
        return target;
    }
    addSpatialFunctions(**target);
    const auto steps = schema::publishedSteps();
    if (auto laid = schema::bringUpToDate(**target, 0, steps.first(step)); !laid) {
        return std::unexpected(laid.error());
    }
    (*target)->execute("PRAGMA synchronous = OFF; PRAGMA foreign_keys = FALSE; "
                       "PRAGMA ignore_check_constraints = TRUE");
    const auto tables = salvageRows(**source, **target, progress);
    if (auto copied = (*target)->outcome(); !copied) {
        return std::unexpected(copied.error());
    }
    if (std::ranges::all_of(tables, &SalvagedTable::isLost)) {
        return base::fail(base::ErrorKind::damagedWater, "no table of a water can be found in it",
                          {}, "go back to a copy");
    }
    std::ranges::for_each(tables, [&](const SalvagedTable& table) { tell(table, losses); });
    if (auto upgraded = schema::bringUpToDate(**target, static_cast<std::int64_t>(step));
        !upgraded) {
        return std::unexpected(upgraded.error());
    }
    return target;
}

water::Water readWhatMakesSense(Connection& connection, Losses& losses, base::Progress& progress) {
    connection.leaveOutDamaged([&losses](const base::Error& error) { losses.add(error.what); });
    water::Water water;
    recallFacts(connection, water);
    recallShoreline(connection, water);
    recallDays(connection, water, progress);
    for (const auto recall : recallsOfTheRest) {
        recall(connection, water);
    }
    static_cast<void>(connection.isRowWhole()); // what the last of them said
    return water;
}

} // namespace

Result<Rescue> rescue(const fs::path& damaged, const fs::path& to, base::Progress& progress) {
    progress.begin("reading what can be read");
    std::error_code fault;
    if (fs::exists(to, fault)) {
        return base::fail(base::ErrorKind::unwritableOutput, "a file of this name is there already",
                          to.string(), "choose another name, or remove it first");
    }
    const Scratch asItIs(to);
    const Scratch rows(to);
    if (auto copied = copyAsItIs(damaged, asItIs); !copied) {
        return std::unexpected(copied.error());
    }
    Losses losses;
    auto read = salvaged(asItIs, rows, losses, progress);
    if (!read) {
        base::Error error = read.error();
        error.where =
            error.kind == base::ErrorKind::unwritableOutput ? to.string() : damaged.string();
        return std::unexpected(std::move(error));
    }
    const water::Water water = readWhatMakesSense(**read, losses, progress);
    if (auto whole = (*read)->outcome(); !whole) {
        return std::unexpected(whole.error());
    }
    if (auto written = writeWater(to, water, {}, {}, progress); !written) {
        return std::unexpected(written.error());
    }
    auto store = open(to, Purpose::looking);
    auto held =
        store ? (*store)->check(progress) : Result<CheckReport>(std::unexpected(store.error()));
    if (!held) {
        return std::unexpected(held.error());
    }
    return Rescue{std::move(*held), losses.sentences()};
}

} // namespace store
