// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/schema/steps.h"

#include "core/base/number_text.h"
#include "core/store/statement.h"
#include "core/store/transaction.h"

#include <array>

namespace store::schema {

namespace {

constexpr std::array<Step, 10> published{layStep1, layStep2, layStep3, layStep4, layStep5,
                                         layStep6, layStep7, layStep8, layStep9, layStep10};

base::Result<void> runSteps(Connection& connection, std::int64_t from,
                            std::span<const Step> steps) {
    Transaction transaction(connection);
    for (auto step = static_cast<std::size_t>(from); step < steps.size(); ++step) {
        steps[step](connection);
    }
    Statement note(connection, "INSERT OR REPLACE INTO water_file (key, value) VALUES "
                               "('schema_step', ?)");
    note.run(std::to_string(steps.size()));
    return transaction.commit();
}

} // namespace

std::span<const Step> publishedSteps() {
    return published;
}

std::int64_t newestStep() {
    return static_cast<std::int64_t>(published.size());
}

std::optional<std::int64_t> stepOf(Connection& connection) {
    Statement table(connection,
                    "SELECT 1 FROM sqlite_master WHERE type='table' AND name='water_file'");
    table.ask();
    if (!table.next()) {
        return std::nullopt;
    }
    Statement step(connection, "SELECT value FROM water_file WHERE key='schema_step'");
    step.ask();
    if (!step.next()) {
        return std::nullopt;
    }
    const auto number = base::wholeNumberFrom(step.text(0));
    if (!number || *number < 1) {
        connection.failDamaged("the water file does not say which version wrote it");
        return std::nullopt;
    }
    return number;
}

base::Result<void> bringUpToDate(Connection& connection, std::int64_t from,
                                 std::span<const Step> steps) {
    // Tables are laid anew and take over names: what points to them is asked by check() afterwards.
    connection.execute("PRAGMA foreign_keys = FALSE");
    auto done = runSteps(connection, from, steps);
    if (done) {
        connection.execute("PRAGMA foreign_keys = TRUE");
        done = connection.outcome();
    }
    return done;
}

} // namespace store::schema
