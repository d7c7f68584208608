#pragma once

// The one place that knows which Catch2 is used: version 3 will be <catch2/catch_all.hpp>.
#include <catch2/catch.hpp>
