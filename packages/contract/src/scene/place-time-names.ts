/** Fields that go with `daylight_basis` `place_time`. */
export const placeTimeNames = ["latitude_deg", "longitude_deg", "time", "local_time", "time_zone"] as const;
