// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>

namespace store {

/// Takes away the journal that a save broken off left beside a water file that is gone: SQLite
/// would roll it back into the next file of that name. Only where no water file of this name
/// stands.
void removeJournalOf(const std::filesystem::path& gone);

} // namespace store
