// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/write_water.h"

#include "core/base/whole_file.h"
#include "core/store/orphan_journal.h"
#include "core/store/water_store.h"
#include "core/store/write_right.h"

namespace store {

base::Result<void> writeWater(const std::filesystem::path& path, const water::Water& water,
                              const water::Derived& found, const marks::ToldMarks& told,
                              base::Progress& progress) {
    WriteRight right(path, Purpose::writing); // So that two that make the same water take turns.
    if (right.owner()) {
        return std::unexpected(inUseBy(*right.owner(), path));
    }
    base::PendingFile pending(path);
    base::Result<void> filled;
    {
        auto store = create(pending.beside());
        filled = store ? (*store)->saveWhole(water, found, told, progress)
                       : base::Result<void>(std::unexpected(store.error()));
    }
    if (!filled) {
        base::Error error = filled.error();
        if (!error.where.empty()) {
            error.where = path.string();
        }
        return std::unexpected(std::move(error));
    }
    std::error_code fault;
    if (std::filesystem::exists(path, fault)) {
        return base::fail(base::ErrorKind::unwritableOutput, "a file of this name is there already",
                          path.string(), "choose another name, or remove it first");
    }
    removeJournalOf(path);
    return pending.putInPlace();
}

} // namespace store
