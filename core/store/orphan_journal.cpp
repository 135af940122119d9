// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/orphan_journal.h"

#include <system_error>

namespace store {

void removeJournalOf(const std::filesystem::path& gone) {
    std::error_code fault;
    if (!std::filesystem::exists(gone, fault) && !fault) {
        std::filesystem::remove(gone.string() + "-journal", fault);
    }
}

} // namespace store
