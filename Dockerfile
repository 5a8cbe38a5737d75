# Two stages: build with the wrapper, then a small image in layers that change apart.
FROM debian:bookworm-slim AS build
RUN apt-get update \
 && apt-get install -y --no-install-recommends openjdk-17-jdk-headless ca-certificates curl unzip \
 && rm -rf /var/lib/apt/lists/*
WORKDIR /build
COPY .mvn .mvn
COPY mvnw pom.xml ./
RUN ./mvnw -B -q dependency:go-offline
COPY db db
COPY seed-data seed-data
COPY src src
RUN ./mvnw -B -q -DskipTests package \
 && java -Djarmode=tools -jar target/yearline-*.jar extract --layers --destination layers

FROM debian:bookworm-slim
RUN apt-get update \
 && apt-get install -y --no-install-recommends openjdk-17-jre-headless curl \
 && rm -rf /var/lib/apt/lists/* \
 && useradd --system --uid 10001 --create-home --home-dir /var/lib/yearline yearline
WORKDIR /opt/yearline
COPY --from=build /build/layers/dependencies/ ./
COPY --from=build /build/layers/spring-boot-loader/ ./
COPY --from=build /build/layers/snapshot-dependencies/ ./
COPY --from=build /build/layers/application/ ./
RUN mv yearline-*.jar yearline.jar
USER yearline
EXPOSE 8080
# The embedded database, where it is used, lies in the user's home, so that one volume keeps it.
ENV SPRING_DATASOURCE_URL="jdbc:h2:file:/var/lib/yearline/yearline;MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH"
ENTRYPOINT ["java", "-XX:MaxRAMPercentage=70", "-jar", "yearline.jar"]
