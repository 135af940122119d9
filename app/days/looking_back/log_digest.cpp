// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/looking_back/log_digest.h"

#include "core/base/made_of_chunks.h"

namespace days::looking_back {

using logbook::LogSum;

const LogSum& sumOf(const logbook::KeptLog& log, const units::Clock& clock) {
    struct Last {
        logbook::KeptLog log;
        units::Clock clock;
        LogSum sum;
        base::MadeOfChunks<logbook::Stay, LogSum> ofChunks;
    };
    static Last last;
    const bool isOtherClock = !(clock == last.clock);
    if (isOtherClock) {
        last.ofChunks.forget();
    }
    if (isOtherClock || !log.isSameAs(last.log)) {
        last.log = log;
        last.clock = clock;
        last.sum = {};
        const auto sums = last.ofChunks.of(
            log, [&](std::span<const logbook::Stay> stays) { return LogSum::of(stays, clock); });
        for (const auto& sum : sums) {
            last.sum.add(*sum);
        }
    }
    return last.sum;
}

} // namespace days::looking_back
