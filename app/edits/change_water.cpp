// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/edits/change_water.h"

#include "core/water/document/swap_parts.h"

namespace edits {

ChangeWater::ChangeWater(open_water::OpenWater& open, const QString& name,
                         std::vector<water::Part> parts, water::Water after, Gesture gesture)
    : QUndoCommand(name), open_(open), gesture_(gesture), parts_(std::move(parts)),
      other_(std::move(after)) {}

void ChangeWater::redo() {
    open_.swapParts(other_, parts_);
}

void ChangeWater::undo() {
    open_.swapParts(other_, parts_);
}

bool ChangeWater::mergeWith(const QUndoCommand* next) {
    const auto* later = static_cast<const ChangeWater*>(next); // Qt asks only those of one id.
    if (later->parts_ != parts_) {
        return false;
    }
    // What the water was before the first of them is what it is to be again.
    setObsolete(water::copyOfParts(*open_.water(), parts_) == other_);
    return true;
}

Gesture newGesture() {
    static int last = 0;
    return static_cast<Gesture>(++last);
}

base::Result<void> tryAct(open_water::OpenWater& open, const QString& name, const Act& act,
                          Gesture gesture) {
    const auto before = open.water();
    const base::Result<water::Water> after = act(*before);
    if (!after) {
        return std::unexpected(after.error());
    }
    std::vector<water::Part> touched = water::differingParts(*before, *after);
    if (!touched.empty()) {
        water::Water kept = water::copyOfParts(*after, touched);
        open.undoStack().push(
            new ChangeWater(open, name, std::move(touched), std::move(kept), gesture));
    }
    return {};
}

void act(open_water::OpenWater& open, const QString& name, const Act& act, Gesture gesture) {
    if (const auto done = tryAct(open, name, act, gesture); !done) {
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
