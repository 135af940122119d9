// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/edits/change_water.h"

#include "core/water/swap_parts.h"

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

void change(open_water::OpenWater& open, const QString& name, std::vector<water::Part> parts,
            const std::function<void(water::Water&)>& change) {
    const water::Water before = water::copyOfParts(*open.water(), parts);
    water::Water after = before;
    change(after);
    if (after == before) {
        return;
    }
    open.undoStack().push(new ChangeWater(open, name, std::move(parts), std::move(after)));
}

} // namespace edits
