// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/edits/change_water.h"

#include "core/water/document/swap_parts.h"

namespace edits {

ChangeWater::ChangeWater(open_water::OpenWater& open, const QString& name,
                         std::vector<water::Part> parts, water::Water after)
    : QUndoCommand(name), open_(open), parts_(std::move(parts)), other_(std::move(after)) {}

void ChangeWater::redo() {
    open_.swapParts(other_, parts_);
}

void ChangeWater::undo() {
    open_.swapParts(other_, parts_);
}

base::Result<void> tryAct(open_water::OpenWater& open, const QString& name, const Act& act) {
    const auto before = open.water();
    const base::Result<water::Water> after = act(*before);
    if (!after) {
        return std::unexpected(after.error());
    }
    std::vector<water::Part> touched = water::differingParts(*before, *after);
    if (!touched.empty()) {
        water::Water kept = water::copyOfParts(*after, touched);
        open.undoStack().push(new ChangeWater(open, name, std::move(touched), std::move(kept)));
    }
    return {};
}

void act(open_water::OpenWater& open, const QString& name, const Act& act) {
    if (const auto done = tryAct(open, name, act); !done) {
        emit open.failed(done.error());
    }
}

void change(open_water::OpenWater& open, const QString& name, std::vector<water::Part> parts,
            const std::function<void(water::Water&)>& change) {
    act(open, name, [&](const water::Water& before) -> base::Result<water::Water> {
        water::Water changed = before;
        change(changed);
        water::Water after = before;
        water::swapParts(after, changed, parts);
        return after;
    });
}

} // namespace edits
