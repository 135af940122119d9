// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/write_water.h"

#include "core/base/whole_file.h"
#include "core/store/water_store.h"

namespace store {

base::Result<void> writeWater(const std::filesystem::path& path, const water::Water& water,
                              const water::Derived& found, std::span<const marks::Mark> marks,
                              base::Progress& progress) {
    base::PendingFile pending(path);
    base::Result<void> filled;
    {
        auto store = create(pending.beside());
        filled = store ? (*store)->saveWhole(water, found, marks, progress)
                       : base::Result<void>(std::unexpected(store.error()));
    }
    if (!filled) {
        base::Error error = filled.error();
        if (!error.where.empty()) {
            error.where = path.string();
        }
        return std::unexpected(std::move(error));
    }
    return pending.putInPlace();
}

} // namespace store
