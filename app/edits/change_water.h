// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/open_water/open_water.h"
#include "core/base/result.h"

#include <QUndoCommand>

#include <functional>
#include <vector>

namespace edits {

/// Edits that one movement of the hand makes, a slider dragged along: they are undone as one.
enum class Gesture : int { none = -1 };
/// One that no edit belongs to yet.
[[nodiscard]] Gesture newGesture();

/// One act of the user on the open water: does, undoes and does again by swapping the parts that it
/// touches. The other files here each give one act of core/acts its name.
class ChangeWater : public QUndoCommand {
public:
    /// \param name what the act is called: "Name section". \param after the parts as it leaves
    /// them.
    ChangeWater(open_water::OpenWater& open, const QString& name, std::vector<water::Part> parts,
                water::Water after, Gesture gesture = Gesture::none);

    void redo() override;
    void undo() override;
    [[nodiscard]] int id() const override { return static_cast<int>(gesture_); }
    /// Takes in the next one of its gesture, and is gone where the hand came back to its start.
    bool mergeWith(const QUndoCommand* next) override;

private:
    open_water::OpenWater& open_;
    Gesture gesture_;
    std::vector<water::Part> parts_;
    water::Water other_; ///< The parts as they are not at the moment.
};

/// An act of core/acts, on the water as it is.
using Act = std::function<base::Result<water::Water>(const water::Water&)>;

/// Does the act, once, and puts it on the undo stack with the parts that it touched; nothing
/// happens where it leaves the water as it was. \return why it cannot be done; nothing is changed
/// then.
[[nodiscard]] base::Result<void> tryAct(open_water::OpenWater& open, const QString& name,
                                        const Act& act, Gesture gesture = Gesture::none);
/// The same; OpenWater::failed() tells what cannot be done.
void act(open_water::OpenWater& open, const QString& name, const Act& act,
         Gesture gesture = Gesture::none);

/// Makes a change that no act of core makes. \param parts what may come out otherwise; of the rest
/// nothing is taken.
void change(open_water::OpenWater& open, const QString& name, std::vector<water::Part> parts,
            const std::function<void(water::Water&)>& change);

} // namespace edits
