// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractButton>

namespace widgets {

/// From now on the key of the button clicks it at once. By itself Qt lets the button be seen to go
/// down for a tenth of a second first: what a quick hand types meanwhile would go to where the keys
/// went before, and of several presses in that time one would be left.
void actAtOnce(QAbstractButton& button);

} // namespace widgets
