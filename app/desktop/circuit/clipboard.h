#pragma once

#include "core/circuit/circuit.h"
#include "core/units/result.h"

#include <memory>
#include <optional>

class QMimeData;

namespace pumpwright {

inline constexpr char kFragmentMimeType[] = "application/x-pumpwright-fragment";

/// A fragment for the clipboard: our own text, and a picture (SVG, PNG) for other programs.
std::unique_ptr<QMimeData> clipboardData(const Circuit& fragment);

/// The fragment on the clipboard; none where there is none that can be read.
std::optional<Circuit> fragmentFrom(const QMimeData& data);

} // namespace pumpwright
