// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/layers/furniture_layer.h"

#include "app/chart/depth_colours.h"
#include "app/chart/furniture.h"

namespace chart {

void FurnitureLayer::reserve(LayerContext& on) const {
    for (const FurniturePiece& piece : furnitureOf(on)) {
        on.labels.block(piece.box);
    }
}

void FurnitureLayer::paint(LayerContext& on) const {
    for (const FurniturePiece& piece : furnitureOf(on)) {
        piece.draw(on, piece.box);
    }
}

} // namespace chart
