// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/open_water/open_water.h"

#include <QUndoCommand>

#include <functional>
#include <vector>

namespace edits {

/// One act of the user on the open water: does, undoes and does again by swapping the parts that it
/// touches. The other files here each make one kind of act from it.
class ChangeWater : public QUndoCommand {
public:
    /// \param name what the act is called: "Name section". \param after the parts as it leaves
    /// them.
    ChangeWater(open_water::OpenWater& open, const QString& name, std::vector<water::Part> parts,
                water::Water after);

    void redo() override;
    void undo() override;

private:
    open_water::OpenWater& open_;
    std::vector<water::Part> parts_;
    water::Water other_; ///< The parts as they are not at the moment.
};

/// Makes the change, once, and puts it on the undo stack; nothing happens where the parts come out
/// as they were.
void change(open_water::OpenWater& open, const QString& name, std::vector<water::Part> parts,
            const std::function<void(water::Water&)>& change);

} // namespace edits
